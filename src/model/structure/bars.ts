import { dimensionedText, type Fault } from '../../read/index.ts';
import { PARTS } from '../../parts/facts.ts';
import { columnOf, facing } from '../pose.ts';
import { tubeOf } from '../tube.ts';
import type { Connection, Vec3 } from '../types.ts';
import { cross, dot, lengthOf, minus, plus, squareTo, times, unit } from '../vectors.ts';
import { faultAt, say } from './faults.ts';
import { isSamePlace } from './nodes.ts';
import type { BarEnd, BuiltBar, Covered, Node, PlannedBar } from './types.ts';

const inMm = (value: number): string => dimensionedText({ value, dimension: 'length' });

/** A tube of the length that its sockets leave, undrilled, and the sockets and sleeves that hold it. */
export function buildBar(plan: PlannedBar, nodes: readonly Node[], faults: Fault[]): BuiltBar {
  const way = minus(plan.to, plan.from);
  const [axis, span] = [unit(way), lengthOf(way)];
  const ends = [endAt(plan, plan.from, nodes), endAt(plan, plan.to, nodes)] as const;
  const length = exact(span - ends[0].stop - ends[1].stop);
  const least = ends[0].depth + ends[1].depth;
  if (length <= least) faults.push(faultAt(plan.told, say.short(inMm(span)), say.longer(inMm(least + ends[0].stop + ends[1].stop))));
  const covered = coveredBy(plan, axis, span, ends, nodes);
  covered.slice(1).forEach((next, place) => {
    const before = covered[place];
    if (before !== undefined && next.from < before.to - 1e-6) faults.push(faultAt(plan.told, say.run(inMm(middleOf(before)), inMm(middleOf(next))), say.further(inMm(middleOf(next) - middleOf(before) + before.to - next.from))));
  });
  const side = squareTo(plan.side, axis) ?? squareTo([0, 1, 0], axis) ?? squareTo([0, 0, 1], axis) ?? [0, 0, 1];
  const middle = plus(plan.from, times(axis, ends[0].stop + Math.max(length, 1) / 2));
  const { id, kind, place, group, tube } = plan;
  const shape = tubeOf(tube, Math.max(length, 1));
  return {
    plan, axis, span, length, ends, covered,
    part: { id, kind, place, group, shape, pose: facing(middle, axis, side, cross(axis, side)), mass: PARTS[kind].mass(shape, tube.density) },
  };
}

/** A length without the dust of the last figures. */
const exact = (value: number): number => Math.round(value * 1e9) / 1e9;

const middleOf = ({ from, to }: Covered): number => (from + to) / 2;

function endAt({ id }: PlannedBar, at: Vec3, nodes: readonly Node[]): BarEnd {
  const joint = nodes.find((node) => isSamePlace(node.at, at))?.joint;
  const port = joint?.laid.taken.find(({ need }) => need.part === id && need.is === 'socket')?.port;
  return joint === null || joint === undefined || port?.is !== 'socket' ? { joint: null, stop: 0, depth: 0 } : { joint: joint.id, stop: port.stop, depth: port.depth };
}

/** What the joints cover of a bar, from its beginning to its end. */
function coveredBy({ id, from, through }: PlannedBar, axis: Vec3, span: number, ends: readonly [BarEnd, BarEnd], nodes: readonly Node[]): readonly Covered[] {
  const sleeves = through.flatMap((at) => {
    const taken = nodes.find((node) => isSamePlace(node.at, at))?.joint?.laid.taken.find(({ need }) => need.part === id && need.is === 'sleeve');
    if (taken?.port.is !== 'sleeve') return [];
    const along = dot(minus(at, from), axis);
    const [after, before] = dot(taken.axis, axis) > 0 ? [taken.port.above, taken.port.below] : [taken.port.below, taken.port.above];
    return [{ from: along - before, to: along + after }];
  });
  return [
    ...(ends[0].joint === null ? [] : [{ from: 0, to: ends[0].stop + ends[0].depth }]),
    ...sleeves.sort((a, b) => a.from - b.from),
    ...(ends[1].joint === null ? [] : [{ from: span - ends[1].stop - ends[1].depth, to: span }]),
  ];
}

/** The sockets its ends go into. */
export const socketsOf = ({ plan, axis, ends }: BuiltBar): readonly Connection[] => ends.flatMap(({ joint, depth }, place): readonly Connection[] =>
  (joint === null ? [] : [{ is: 'socket', bar: plan.id, joint, out: place === 0 ? axis : times(axis, -1), depth }]));

/** The bar with further holes: `at` mm from the beginning of the bar, drilled along a direction. */
export function drilled(bar: BuiltBar, holes: readonly { readonly at: number; readonly along: Vec3; readonly diameter: number }[]): BuiltBar {
  const { part, axis, length, ends } = bar;
  if (part.shape.form !== 'tube' || holes.length === 0) return bar;
  const [side, up] = [columnOf(part.pose, 1), columnOf(part.pose, 2)];
  const own = holes.map(({ at, along, diameter }) => {
    const turn = Math.round(Math.atan2(dot(along, up), dot(along, side)) * 1e9) / 1e9;
    const isAcross = Math.abs(Math.sin(turn)) < 1e-6;
    return { at: at - ends[0].stop - length / 2, diameter, ...(isAcross ? {} : { turn }) };
  });
  return { ...bar, axis, part: { ...part, shape: { ...part.shape, holes: [...part.shape.holes, ...own] } } };
}

/** How far along a bar a point is, from its beginning. */
export const alongBar = ({ plan, axis }: BuiltBar, at: Vec3): number => dot(minus(at, plan.from), axis);
