import { lengthOf, minus, times, unit, type Vec3 } from '../../model/index.ts';
import { barOf, toWhole, type Bar } from './bar.ts';
import { freedoms, type Frame } from './types.ts';

/** A bar with the numbers of its twelve freedoms in the whole frame. */
export interface PlacedBar extends Bar {
  readonly places: readonly number[];
}

/** A cable's spring E A / L, N/mm, along a direction; `places` are the three shifts of `from`, then of `to`. */
export interface Spring {
  readonly name: string;
  readonly stiffness: number;
  readonly along: readonly number[];
  readonly places: readonly number[];
}

/** The frame as one linear system, six freedoms to a node in the order of `nodes`. */
export interface Assembly {
  readonly frame: Frame;
  readonly size: number;
  /** Greatest extent, mm: weighs turns against shifts. */
  readonly extent: number;
  readonly bars: readonly PlacedBar[];
  readonly springs: readonly Spring[];
  /** Of the members alone, row by row. */
  readonly stiffness: Float64Array;
  readonly loads: Float64Array;
  readonly held: ReadonlySet<number>;
}

/** Errors: FrameError where a line load finds no bending stiffness. */
export function assemble(frame: Frame): Assembly {
  const size = 6 * frame.nodes.length;
  const numbers = new Map(frame.nodes.map(({ name }, index) => [name, 6 * index]));
  const first = (node: string): number => numbers.get(node) ?? 0;
  const bars = placedBars(frame, first);
  return {
    frame, size, extent: extentOf(frame), bars,
    springs: springsOf(frame, first),
    stiffness: stiffnessOf(size, bars),
    loads: loadsOf(frame, size, bars, first),
    held: new Set(frame.supports.flatMap(({ node, held }) => held.map((freedom) => first(node) + freedoms.indexOf(freedom)))),
  };
}

/** All freedoms of nodes, `count` to each. */
const from = (first: number, count: number): readonly number[] => Array.from({ length: count }, (_, i) => first + i);

function placedBars(frame: Frame, first: (node: string) => number): readonly PlacedBar[] {
  const at = placesOf(frame);
  return frame.members.map((member) => ({
    ...barOf(member, at(member.from), at(member.to), lineLoadOn(frame, member.name)),
    places: [...from(first(member.from), 6), ...from(first(member.to), 6)],
  }));
}

function springsOf(frame: Frame, first: (node: string) => number): readonly Spring[] {
  const at = placesOf(frame);
  return frame.cables.map((cable) => {
    const span = minus(at(cable.to), at(cable.from));
    return {
      name: cable.name, stiffness: cable.EA / lengthOf(span),
      along: [...times(unit(span), -1), ...unit(span)],
      places: [...from(first(cable.from), 3), ...from(first(cable.to), 3)],
    };
  });
}

function placesOf(frame: Frame): (node: string) => Vec3 {
  const places = new Map(frame.nodes.map(({ name, at }) => [name, at]));
  return (node) => places.get(node) ?? [0, 0, 0];
}

function lineLoadOn(frame: Frame, name: string): Vec3 {
  const loads = frame.lineLoads.filter(({ member }) => member === name);
  const sum = (axis: 0 | 1 | 2): number => loads.reduce((total, { perLength }) => total + perLength[axis], 0);
  return [sum(0), sum(1), sum(2)];
}

function extentOf({ nodes }: Frame): number {
  const spread = ([0, 1, 2] as const).map((axis) => {
    const values = nodes.map(({ at }) => at[axis]);
    return Math.max(...values) - Math.min(...values);
  });
  return Math.max(1, ...spread);
}

function stiffnessOf(size: number, bars: readonly PlacedBar[]): Float64Array {
  const grid = new Float64Array(size * size);
  for (const bar of bars) {
    wholeStiffness(bar).forEach((column, j) => {
      column.forEach((value, i) => { add(grid, (bar.places[i] ?? 0) * size + (bar.places[j] ?? 0), value); });
    });
  }
  return grid;
}

/** Columns of Tᵀ K T: the bar's stiffness turned into the axes of the whole frame. */
function wholeStiffness({ axes, stiffness }: Bar): readonly (readonly number[])[] {
  const rows = stiffness.map((row) => toWhole(axes, row));
  return from(0, 12).map((column) => toWhole(axes, rows.map((row) => row[column] ?? 0)));
}

function loadsOf(frame: Frame, size: number, bars: readonly PlacedBar[], first: (node: string) => number): Float64Array {
  const loads = nodeLoadsOf(frame, size, first);
  for (const bar of bars) {
    toWhole(bar.axes, bar.handedOn).forEach((value, i) => { add(loads, bar.places[i] ?? 0, value); });
  }
  return loads;
}

/** Loads that stand on the nodes themselves. */
export function nodeLoadsOf(frame: Frame, size: number, first: (node: string) => number): Float64Array {
  const loads = new Float64Array(size);
  for (const { node, force = [0, 0, 0], moment = [0, 0, 0] } of frame.nodeLoads) {
    [...force, ...moment].forEach((value, i) => { add(loads, first(node) + i, value); });
  }
  return loads;
}

export function add(values: Float64Array, index: number, value: number): void {
  values[index] = (values[index] ?? 0) + value;
}
