import { cross, dot, lengthOf, minus, times, unit, type Vec3 } from '../../model/index.ts';
import { FrameError } from './errors.ts';
import type { EndTurn, Member, Section } from './types.ts';

type Grid = readonly (readonly number[])[];

/** A member ready to be put together: twelve end freedoms (six at `from`, six at `to`) in its own axes. */
export interface Bar {
  readonly name: string;
  /** The member's own x, y, z in the axes of the whole frame. */
  readonly axes: readonly [Vec3, Vec3, Vec3];
  readonly stiffness: Grid;
  /** What its line load hands to the nodes, N and N·mm. */
  readonly handedOn: readonly number[];
}

/** Errors: FrameError where a line load across finds no bending stiffness. */
export function barOf(member: Member, from: Vec3, to: Vec3, perLength: Vec3): Bar {
  const length = lengthOf(minus(to, from));
  const axes = ownAxes(unit(minus(to, from)), member.up);
  const load: Vec3 = [dot(axes[0], perLength), dot(axes[1], perLength), dot(axes[2], perLength)];
  refuseLimpUnderLoad(member, load);
  const whole = { stiffness: stiffnessOf(length, member.section), handedOn: evenLoadOf(length, load) };
  return { name: member.name, axes, ...releasedEnds(member).reduce(letGo, whole) };
}

/** Twelve numbers of the whole frame, in the member's own axes. */
export const toOwn = ([x, y, z]: Bar['axes'], values: readonly number[]): readonly number[] => turned(x, y, z, values);

/** Twelve numbers in the member's own axes, in the axes of the whole frame. */
export const toWhole = ([x, y, z]: Bar['axes'], values: readonly number[]): readonly number[] =>
  turned([x[0], y[0], z[0]], [x[1], y[1], z[1]], [x[2], y[2], z[2]], values);

/** Each three of twelve numbers by the three rows of a turn; written out, because frames have it done some ten thousand times. */
function turned(one: Vec3, two: Vec3, three: Vec3, values: readonly number[]): readonly number[] {
  const turns: number[] = [];
  for (let first = 0; first < 12; first += 3) {
    const a = values[first] ?? 0;
    const b = values[first + 1] ?? 0;
    const c = values[first + 2] ?? 0;
    turns.push(one[0] * a + one[1] * b + one[2] * c, two[0] * a + two[1] * b + two[2] * c, three[0] * a + three[1] * b + three[2] * c);
  }
  return turns;
}

function ownAxes(x: Vec3, up?: Vec3): Bar['axes'] {
  const upright = Math.hypot(x[0], x[1]) < 1e-9;
  const wish = up ?? (upright ? [1, 0, 0] as const : [0, 0, 1] as const);
  const z = unit(minus(wish, times(x, dot(wish, x))));
  return [x, cross(z, x), z];
}

/** Stiffness of a bar between its twelve end freedoms, by the slope-deflection equations of Euler–Bernoulli beams. */
function stiffnessOf(length: number, { EA, EIy, EIz, GJ }: Section): Grid {
  const grid = Array.from({ length: 12 }, () => new Array<number>(12).fill(0));
  spread(grid, [0, 6], [[EA / length, -EA / length], [-EA / length, EA / length]]);
  spread(grid, [3, 9], [[GJ / length, -GJ / length], [-GJ / length, GJ / length]]);
  spread(grid, [1, 5, 7, 11], bending(length, EIz, 1));
  // Round y a positive turn lowers z: the mixed terms change sign.
  spread(grid, [2, 4, 8, 10], bending(length, EIy, -1));
  return grid;
}

function bending(length: number, EI: number, sign: 1 | -1): Grid {
  const [k, m, t] = [(12 * EI) / length ** 3, (sign * 6 * EI) / length ** 2, (2 * EI) / length];
  return [[k, m, -k, m], [m, 2 * t, -m, t], [-k, -m, k, -m], [m, t, -m, 2 * t]];
}

function spread(grid: number[][], places: readonly number[], block: Grid): void {
  places.forEach((row, i) => {
    const line = grid[row];
    if (line) places.forEach((column, j) => { line[column] = block[i]?.[j] ?? 0; });
  });
}

/** w L/2 and w L²/12 at each end: the fixed-end forces turned round. */
function evenLoadOf(length: number, [x, y, z]: Vec3): readonly number[] {
  const [half, twelfth] = [length / 2, length ** 2 / 12];
  const end = (sign: 1 | -1): readonly number[] =>
    [x * half, y * half, z * half, 0, -sign * z * twelfth, sign * y * twelfth];
  return [...end(1), ...end(-1)];
}

function refuseLimpUnderLoad({ name, section }: Member, [, y, z]: Vec3): void {
  const limp = (y !== 0 && section.EIz === 0) || (z !== 0 && section.EIy === 0);
  if (limp) throw new FrameError(`member "${name}" has a line load across but no bending stiffness; give it E I or load its nodes`);
}

const turnPlace: Readonly<Record<EndTurn, number>> = { rx: 3, ry: 4, rz: 5 };

const releasedEnds = ({ released }: Member): readonly number[] => [
  ...(released?.from ?? []).map((turn) => turnPlace[turn]),
  ...(released?.to ?? []).map((turn) => turnPlace[turn] + 6),
];

/** Takes one freedom out so that no force comes through it (static condensation, Guyan 1965 (M)). */
function letGo(bar: Pick<Bar, 'stiffness' | 'handedOn'>, place: number): Pick<Bar, 'stiffness' | 'handedOn'> {
  const line = bar.stiffness[place] ?? [];
  const own = line[place] ?? 0;
  const others = Math.max(...line.map(Math.abs));
  // Already let go through the other end, as the twist of a bar with both ends free.
  if (own <= 1e-9 * others || own === 0) return bar;
  const load = bar.handedOn[place] ?? 0;
  const share = (index: number): number => (index === place ? 1 : (line[index] ?? 0) / own);
  return {
    stiffness: bar.stiffness.map((row, i) => row.map((value, j) => (i === place || j === place ? 0 : value - share(i) * (line[j] ?? 0)))),
    handedOn: bar.handedOn.map((value, i) => (i === place ? 0 : value - share(i) * load)),
  };
}
