import { facing } from '../pose.ts';
import { runsAlongX } from '../patterns/sides.ts';
import type { Pose, Side, Vec3 } from '../types.ts';
import { cross, dot, minus, plus, squareTo, times, unit } from '../vectors.ts';
import type { BuiltBar } from './types.ts';

/** Bars that lie along each other or in one plane may be off by this much, mm. */
const LEVEL = 0.5;

/** A bar on a side of a rectangle, in the rectangle's own coordinates: from and to along the side, between the points it runs between. */
export interface SideBar {
  readonly bar: BuiltBar;
  readonly from: number;
  readonly to: number;
  /** True when the bar runs the way `along` counts. */
  readonly forwards: boolean;
}

/**
 * A rectangle of bars. Own x runs along the bars most along the item's x, own z away from `face`, the origin in the middle of the
 * bars' axes.
 */
export interface Loop {
  readonly middle: Vec3;
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
  /** Half distances between the axes of opposite bars. */
  readonly half: readonly [number, number];
  readonly sides: readonly { readonly side: Side; readonly out: number; readonly bars: readonly SideBar[] }[];
}

/** The rectangle that bars make in a plane square to `face`; null when they make none. */
export function loopOf(bars: readonly BuiltBar[], face: Vec3): Loop | null {
  const z = times(face, -1);
  const along = bars.map(({ axis }) => axis).filter((axis) => Math.abs(dot(axis, face)) < 1e-3);
  const most = along.reduce<Vec3 | null>((best, axis) => (best === null || preference(axis) > preference(best) + 1e-9 ? axis : best), null);
  if (most === null || along.length !== bars.length) return null;
  const flat = squareTo(most, z);
  if (flat === null) return null;
  const x = unit(dot(flat, ORDER) < 0 ? times(flat, -1) : flat);
  const y = cross(z, x);
  const corners = bars.flatMap(({ plan }) => [plan.from, plan.to]);
  const range = (axis: Vec3): readonly [number, number] => [Math.min(...corners.map((at) => dot(at, axis))), Math.max(...corners.map((at) => dot(at, axis)))];
  const [rx, ry, rz] = [range(x), range(y), range(z)];
  if (rz[1] - rz[0] > LEVEL) return null;
  const middle = plus(plus(times(x, mean(rx)), times(y, mean(ry))), times(z, mean(rz)));
  const half = [(rx[1] - rx[0]) / 2, (ry[1] - ry[0]) / 2] as const;
  const sides = (['left', 'right', 'front', 'back'] as const).map((side) => ({ side, out: runsAlongX(side) ? half[1] : half[0], bars: barsOn(bars, side, middle, x, y, half) }));
  const isWhole = sides.every(({ side, bars: own }) => isCovered(own, runsAlongX(side) ? half[0] : half[1]));
  const count = sides.reduce((sum, { bars: own }) => sum + own.length, 0);
  return isWhole && count === bars.length ? { middle, x, y, z, half, sides } : null;
}

/** The item's x before its y before its z. */
const ORDER: Vec3 = [1, 0.1, 0.01];
const preference = (axis: Vec3): number => Math.abs(axis[0]) + 0.1 * Math.abs(axis[1]) + 0.01 * Math.abs(axis[2]);
const mean = ([low, high]: readonly [number, number]): number => (low + high) / 2;

function barsOn(bars: readonly BuiltBar[], side: Side, middle: Vec3, x: Vec3, y: Vec3, half: readonly [number, number]): readonly SideBar[] {
  const [way, across] = runsAlongX(side) ? [x, y] : [y, x];
  const out = (side === 'left' || side === 'front' ? -1 : 1) * (runsAlongX(side) ? half[1] : half[0]);
  return bars.flatMap((bar): SideBar[] => {
    const [from, to] = [minus(bar.plan.from, middle), minus(bar.plan.to, middle)];
    if ([from, to].some((at) => Math.abs(dot(at, across) - out) > LEVEL)) return [];
    const [a, b] = [dot(from, way), dot(to, way)];
    return [{ bar, from: Math.min(a, b), to: Math.max(a, b), forwards: b > a }];
  }).sort((a, b) => a.from - b.from);
}

/** Bars one after the other from corner to corner. */
const isCovered = (bars: readonly SideBar[], half: number): boolean => {
  const ends = [-half, ...bars.map(({ to }) => to)];
  return bars.length > 0 && bars.every(({ from }, place) => Math.abs(from - (ends[place] ?? Number.NaN)) < LEVEL) && Math.abs((ends.at(-1) ?? 0) - half) < LEVEL;
};

const OPPOSITE: Readonly<Record<Side, Side>> = { left: 'right', right: 'left', front: 'back', back: 'front' };

/** The same rectangle seen after half a turn in its plane: a panel laid so may be cut like another one. */
export function halfTurned({ sides, x, y, ...rest }: Loop): Loop {
  const turned = (['left', 'right', 'front', 'back'] as const).flatMap((side) => sides.filter((each) => each.side === OPPOSITE[side]).map(({ out, bars }) => ({
    side, out, bars: bars.map(({ bar, from, to, forwards }) => ({ bar, from: 0 - to, to: 0 - from, forwards: !forwards })).toReversed(),
  })));
  return { ...rest, x: times(x, -1), y: times(y, -1), sides: turned };
}

/** From a panel's own coordinates to the item's: its inner face lies `over` mm from the bars' axes, towards the face. */
export const poseInLoop = ({ middle, x, y, z }: Loop, over: number): Pose => facing(plus(middle, times(z, -over)), x, y, z);

/** Room that the sockets at both ends of a bar take of a side, in the order of `along`, mm from the joints' middles. */
export const reachesOf = ({ bar: { ends }, forwards }: SideBar, gap: number): readonly [number, number] => {
  const [first, last] = ends.map(({ stop, depth, joint }) => (joint === null ? 0 : stop + depth + gap)) as [number, number];
  return forwards ? [first, last] : [last, first];
};
