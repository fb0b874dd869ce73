import { PARTS } from '../../parts/facts.ts';
import { boxOf } from '../patterns/outline.ts';
import { pinsBetween } from '../patterns/wrapped.ts';
import { facing } from '../pose.ts';
import type { Connection, Part, Pattern, PlateHole, Shape, Vec2, Vec3 } from '../types.ts';
import { cross, dot, minus, plus, times } from '../vectors.ts';
import { alongBar } from './bars.ts';
import { faultAt, say } from './faults.ts';
import { throughPin } from './panel-pins.ts';
import type { BuiltBar, PlannedPanel } from './types.ts';
import { barsOf, type BuiltPanel, type Surroundings } from './wrapped.ts';

type PlannedFlat = Extract<PlannedPanel, { is: 'flat' }>;

/** A hinge or stay of a flat panel: the bar it is on, how far from its axis the panel's face is, and where its barbs go in. */
export interface PanelHinge {
  readonly bar: string;
  readonly reach: number;
  readonly barbs: readonly { readonly at: Vec3; readonly diameter: number; readonly depth: number }[];
}

/** How far a flat panel stands over the middle of its outer bars, and its pins from its ends, mm. Common practice, no source. */
const OVER_BAR = 32;
const PIN_FROM_END = 40;
/** White between a panel and the bars it lies on: touching faces, kept from sharing a plane. */
const HAIR = 0.05;
/** A hinged panel begins this far from its hinge's axis, so that it clears the joints when it opens, mm. */
const HINGE_EDGE = 17;
/** Bars may be out of line or out of plane by this much, mm. */
const LEVEL = 0.5;

/** Where a flat panel lies: `u` along its bars, `v` across, the bars in order of `v`. */
interface Lie {
  readonly u: Vec3;
  readonly v: Vec3;
  readonly bars: readonly { readonly bar: BuiltBar; readonly at: number }[];
  /** Of the bars' axes towards the face. */
  readonly height: number;
}

/** A rectangular panel on parallel bars, pinned through each of them or held by hinges; null and told where it cannot lie. */
export function buildFlat(around: Surroundings, plan: PlannedFlat, hinges: readonly PanelHinge[]): BuiltPanel | null {
  const { kit, faults } = around;
  const lie = lieOf(barsOf(around, plan.on), plan.face);
  const [first] = lie?.bars ?? [];
  if (lie === null || first === undefined) {
    faults.push(faultAt(plan.told, say.askew, say.parallel));
    return null;
  }
  const room = roomOf(lie, kit.practice.notchGap);
  const length = plan.length ?? room.to - room.from;
  if (length < 2 * PIN_FROM_END) {
    faults.push(faultAt(plan.told, say.noRoom, say.room));
    return null;
  }
  const middle = plan.length === null ? (room.from + room.to) / 2 : spanMiddle(lie);
  const [low, high] = edgesOf(lie, plan, hinges);
  const tube = first.bar.plan.tube.outside;
  const stand = hinges[0]?.reach ?? tube / 2 + HAIR + plan.lift;
  const centre = plus(plus(times(lie.u, middle), times(lie.v, (low + high) / 2)), times(plan.face, lie.height + stand));
  const pinned = plan.pinned ? pinsBetween(-length / 2, length / 2, PIN_FROM_END, kit.practice.pinPitch).flatMap((along, row) =>
    lie.bars.map(({ bar, at }, place) => ({ bar, place, row, own: [along, at - (low + high) / 2] as Vec2 }))) : [];
  const holes: readonly PlateHole[] = [
    ...pinned.map(({ own }) => ({ at: own, diameter: kit.jointPin.diameter })),
    ...hinges.flatMap(({ barbs }) => barbs.map(({ at, diameter, depth }) => ({ at: [dot(minus(at, centre), lie.u), dot(minus(at, centre), lie.v)] as Vec2, diameter, depth }))),
  ];
  const pattern = flatPatternOf(plan, length, high - low, holes);
  const shape: Shape = { form: 'plate', width: length, height: high - low, thickness: plan.panel.thickness, holes };
  const part: Part = {
    id: plan.id, kind: plan.kind, place: plan.place, group: plan.group, shape,
    pose: facing(centre, lie.u, lie.v, plan.face),
    mass: PARTS[plan.kind].mass(shape, plan.panel.density),
  };
  const rows = pinned.length / lie.bars.length;
  const fasteners = pinned.toSorted((a, b) => b.row - a.row || a.place - b.place).map(({ bar, place, row, own }) => {
    const at = plus(plus(times(lie.u, middle + own[0]), times(lie.v, own[1] + (low + high) / 2)), times(plan.face, lie.height));
    const label = plan.pins(String(place + 1), rows - row);
    return {
      parts: throughPin(kit, label, at, plan.face, lie.u, stand + plan.panel.thickness, bar.plan.tube.outside),
      connection: { is: 'pin', pin: label.id, nut: label.nut, holds: [plan.id, bar.plan.id], out: plan.face } satisfies Connection,
      hole: { bar: bar.plan.id, at: alongBar(bar, at), along: plan.face },
    };
  });
  const lays = lie.bars.filter(({ bar }) => !hinges.some((hinge) => hinge.bar === bar.plan.id) && (plan.pinned || hinges.length === 0))
    .map(({ bar }): Connection => ({ is: 'lay', panel: plan.id, bar: bar.plan.id, out: plan.face }));
  return { plan, pattern, part, pins: fasteners.flatMap(({ parts }) => parts), connections: [...lays, ...fasteners.map(({ connection }) => connection)], holes: fasteners.map(({ hole }) => hole) };
}

/** Parallel bars in one plane square to the face; `v` looks up where it can, else back, else right. */
function lieOf(bars: readonly BuiltBar[], face: Vec3): Lie | null {
  const [first] = bars;
  if (first === undefined || Math.abs(dot(first.axis, face)) > 1e-3) return null;
  const v = cross(face, first.axis);
  const isUp = dot(v, [0.01, 0.1, 1]) >= 0;
  const [u, across] = isUp ? [first.axis, v] : [times(first.axis, -1), times(v, -1)];
  const height = dot(first.plan.from, face);
  const placed = bars.map((bar) => ({ bar, at: dot(bar.plan.from, across), isLevel: [bar.plan.from, bar.plan.to].every((end) => Math.abs(dot(end, face) - height) < LEVEL) && Math.abs(dot(bar.axis, across)) < 1e-3 }));
  return placed.every(({ isLevel }) => isLevel) ? { u, v: across, height, bars: placed.map(({ bar, at }) => ({ bar, at })).sort((a, b) => a.at - b.at) } : null;
}

/** The longest stretch along the bars that no joint of any of them covers. */
function roomOf({ u, bars }: Lie, gap: number): { readonly from: number; readonly to: number } {
  const free = bars.map(({ bar }) => {
    const [start, way] = [dot(bar.plan.from, u), dot(bar.axis, u) > 0 ? 1 : -1];
    const onU = (along: number): number => start + way * along;
    const free: [number, number][] = [];
    let reached = 0;
    for (const { from, to } of [...bar.covered, { from: bar.span + gap, to: bar.span }]) {
      if (from - gap > reached) free.push([onU(reached), onU(from - gap)].sort((a, b) => a - b) as [number, number]);
      reached = Math.max(reached, to + gap);
    }
    return free;
  });
  const common = free.reduce((sofar, own) => sofar.flatMap((one) => own.map((other): [number, number] => [Math.max(one[0], other[0]), Math.min(one[1], other[1])])).filter(([from, to]) => to > from), free[0] ?? []);
  const [from, to] = common.reduce((best, one) => (one[1] - one[0] > best[1] - best[0] + 1e-9 ? one : best), [0, 0] as [number, number]);
  return { from, to };
}

function spanMiddle({ u, bars }: Lie): number {
  const ends = bars.flatMap(({ bar }) => [dot(bar.plan.from, u), dot(bar.plan.to, u)]);
  return (Math.min(...ends) + Math.max(...ends)) / 2;
}

/** Lower and upper edge along `v`: over the outer bars, but short of a bar that hinges are on. */
function edgesOf({ bars }: Lie, { over }: PlannedFlat, hinges: readonly PanelHinge[]): readonly [number, number] {
  const past = (id: string | undefined): number => (hinges.some(({ bar }) => bar === id) ? -HINGE_EDGE : over ?? OVER_BAR);
  const [low, high] = [bars[0], bars.at(-1)];
  return [(low?.at ?? 0) - past(low?.bar.plan.id), (high?.at ?? 0) + past(high?.bar.plan.id)];
}

function flatPatternOf({ panel }: PlannedFlat, width: number, height: number, holes: readonly PlateHole[]): Pattern {
  const [x, y] = [width / 2, height / 2];
  const outline: readonly Vec2[] = [[-x, -y], [x, -y], [x, y], [-x, y]];
  return {
    form: 'flat', panel: panel.name, thickness: panel.thickness, skin: panel.skin, neutralLayer: panel.neutralLayer,
    ...boxOf(outline), outline, base: outline, flaps: [], holes: holes.map(({ at, diameter, depth = null }) => ({ at, diameter, depth, face: depth === null ? 'drawn' : 'other', punched: 'flat', flap: null })),
  };
}
