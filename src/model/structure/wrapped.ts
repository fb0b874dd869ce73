import type { Fault, Kit } from '../../read/index.ts';
import { PARTS } from '../../parts/facts.ts';
import { patternText } from '../patterns/alike.ts';
import { alongSide, outwards } from '../patterns/sides.ts';
import { edgePins, wrappedPattern, type EdgeBar, type EdgeSide } from '../patterns/wrapped.ts';
import { turnedBy } from '../joints/turns.ts';
import { chained, moved, placed, pointed, undone } from '../pose.ts';
import type { Connection, Part, Pattern, Pose, Shape, Side, Vec3 } from '../types.ts';
import { dot } from '../vectors.ts';
import { alongBar } from './bars.ts';
import { faultAt, say } from './faults.ts';
import { halfTurned, loopOf, poseInLoop, reachesOf, type Loop, type SideBar } from './loops.ts';
import { isSamePlace } from './nodes.ts';
import { heldByPin, panelPin, throughPin } from './panel-pins.ts';
import type { BuiltBar, Node, PlannedPanel } from './types.ts';

/** A hole that a panel's pin needs in a bar: `at` mm from the bar's beginning. */
export interface BarHole {
  readonly bar: string;
  readonly at: number;
  readonly along: Vec3;
}

/** A panel with its pins. */
export interface BuiltPanel {
  readonly plan: PlannedPanel;
  readonly pattern: Pattern;
  readonly part: Part;
  readonly pins: readonly Part[];
  readonly connections: readonly Connection[];
  readonly holes: readonly BarHole[];
}

/** What panels need to know of the rest of the item. */
export interface Surroundings {
  readonly kit: Kit;
  readonly bars: readonly BuiltBar[];
  readonly nodes: readonly Node[];
  readonly panels: readonly PlannedPanel[];
  readonly faults: Fault[];
}

type PlannedWrap = Extract<PlannedPanel, { is: 'wrapped' }>;

export const barsOf = ({ bars }: Surroundings, ids: readonly string[]): readonly BuiltBar[] =>
  ids.flatMap((id) => bars.find(({ plan }) => plan.id === id) ?? []);

/** A loop with its edges and the pattern that follows from them. */
interface Laid {
  readonly loop: Loop;
  readonly sides: readonly EdgeSide[];
  readonly pattern: Pattern;
}

/** A panel folded round bars of a loop; null and told where the bars make no rectangle or leave no room. */
export function buildWrapped(around: Surroundings, plan: PlannedWrap): BuiltPanel | null {
  const { kit, faults } = around;
  const bars = barsOf(around, plan.loop);
  const loop = loopOf(bars, plan.face);
  const odd = loop === null ? faultAt(plan.told, say.loop, say.rectangle) : barFault(around, plan, bars);
  if (loop === null || odd !== null) {
    if (odd !== null) faults.push(odd);
    return null;
  }
  const narrow = roomFault(around, plan, loop);
  if (narrow !== null) faults.push(narrow);
  const laid = [loop, halfTurned(loop)].map((each) => laidIn(around, plan, each)).reduce((best, other) => (patternText(other.pattern) < patternText(best.pattern) ? other : best));
  const tube = bars[0]?.plan.tube.outside ?? 0;
  return placedPanel(around, plan, laid, poseInLoop(laid.loop, tube / 2 + kit.practice.wrapClearance));
}

function laidIn(around: Surroundings, plan: PlannedWrap, loop: Loop): Laid {
  const sides = edgesOf(around, plan, loop);
  return { loop, sides, pattern: wrappedPattern(around.kit, plan.panel, sides) };
}

const edgesOf = (around: Surroundings, plan: PlannedWrap, loop: Loop): readonly EdgeSide[] => loop.sides.map((side) => ({
  side: side.side, out: side.out,
  bars: side.bars.map((bar, place) => edgeBar(around, plan, side, bar, place)),
  notches: notchesOf(around, loop, side.side, side.bars),
}));

/** A folded side holds at least its two outer pins. */
function roomFault(around: Surroundings, plan: PlannedWrap, loop: Loop): Fault | null {
  const isNarrow = edgesOf(around, plan, loop).some(({ bars }) => bars.some(({ from, to }) => to - from < 2 * around.kit.practice.pinEnd));
  return isNarrow ? faultAt(plan.told, say.narrow, say.wider) : null;
}

function placedPanel(around: Surroundings, plan: PlannedWrap, { loop, sides, pattern }: Laid, pose: Pose): BuiltPanel {
  const tabs = pattern.flaps.flatMap((flap) => tabPins(around.kit, plan, pattern, flap.name, pose));
  const onBars = loop.sides.flatMap((side, place) => side.bars.map((bar, index) => ({ side: side.side, bar, edge: sides[place]?.bars[index] })));
  const pinned = onBars.flatMap(({ side, bar, edge }) => pinnedEdge(around, plan, side, bar, edge, pose));
  const shape: Shape = { form: 'folded', pattern, folding: Object.fromEntries(pattern.flaps.map(({ name }) => [name, 1])) };
  return {
    plan, pattern,
    part: {
      id: plan.id, kind: plan.kind, place: plan.place, group: plan.group, pose,
      shape, mass: PARTS[plan.kind].mass(shape, plan.panel.density),
    },
    pins: [...tabs.map(({ pin }) => pin), ...pinned.flatMap(({ parts }) => parts)],
    connections: [
      ...onBars.flatMap(({ bar, edge }) => heldOn(plan, bar, edge)),
      ...tabs.map(({ pin, flap }) => heldByPin(pin, plan.id, flap)),
      ...pinned.map(({ connection }) => connection),
    ],
    holes: pinned.map(({ hole }) => hole),
  };
}

function heldOn(plan: PlannedWrap, { bar }: SideBar, edge: EdgeBar | undefined): readonly Connection[] {
  const lay: Connection = { is: 'lay', panel: plan.id, bar: bar.plan.id, out: plan.face };
  return edge?.hold === 'wrap' ? [lay, { is: 'wrap', panel: plan.id, flap: edge.flap, bar: bar.plan.id }] : [lay];
}

/** Round tubes of one width, and none that another panel is folded round. */
function barFault({ panels }: Surroundings, plan: PlannedWrap, bars: readonly BuiltBar[]): Fault | null {
  const [first] = bars;
  const odd = bars.find(({ plan: { tube } }) => tube.profile !== 'round' || tube.outside !== first?.plan.tube.outside);
  if (odd !== undefined) return faultAt(plan.told, say.roundOnly, say.round);
  const taken = bars.find((bar) => panels.some((other) => other !== plan && other.is !== 'flat' && other.wrap.includes(bar.plan.id)));
  return taken === undefined ? null : faultAt(plan.told, say.wrappedTwice(taken.plan.id), say.once);
}

function edgeBar({ kit, panels }: Surroundings, plan: PlannedWrap, { side, bars }: Loop['sides'][number], sideBar: SideBar, place: number): EdgeBar {
  const { id } = sideBar.bar.plan;
  const [before, after] = reachesOf(sideBar, kit.practice.notchGap);
  const isShared = panels.some((other) => other !== plan && other.is === 'wrapped' && other.loop.includes(id));
  return {
    flap: bars.length === 1 ? side : `${side}-${place + 1}`,
    from: sideBar.from + before, to: sideBar.to - after, reach: Math.min(before, after),
    tube: sideBar.bar.plan.tube.outside,
    hold: plan.wrap.includes(id) ? 'wrap' : isShared ? 'share' : 'pin',
  };
}

/** How deep a notch has to go at each joint midway on a side: past its sleeve, its sockets, and what of it looks inwards. */
function notchesOf({ kit, nodes }: Surroundings, loop: Loop, side: Side, bars: readonly SideBar[]): readonly number[] {
  const [ox, oy] = outwards(side);
  const inwards: Vec3 = [0, 1, 2].map((axis) => -(ox * (loop.x[axis] ?? 0) + oy * (loop.y[axis] ?? 0))) as unknown as Vec3;
  return bars.slice(1).map(({ bar, forwards }) => {
    const joint = nodes.find(({ at }) => isSamePlace(at, forwards ? bar.plan.from : bar.plan.to))?.joint;
    if (joint === null || joint === undefined) return kit.practice.notchGap;
    const { kind, turn } = joint.laid;
    const reaches = kind.ports.filter((port) => port.is !== 'sleeve' && dot(turnedBy(turn, port.axis), inwards) > 0.5)
      .map((port) => (port.is === 'socket' ? port.stop + port.depth : port.is === 'stud' ? port.reach : 0));
    return Math.max(kind.sleeveDiameter / 2, kind.socketDiameter / 2, ...reaches) + kit.practice.notchGap;
  });
}

/** The pins of a flap's tab, through it and the middle part, the head on the tab. */
function tabPins(kit: Kit, plan: PlannedWrap, pattern: Pattern, name: string, pose: Pose): readonly { readonly pin: Part; readonly flap: string }[] {
  const flap = pattern.flaps.find((each) => each.name === name);
  const ofFlap = pattern.holes.flatMap((hole, place) => (hole.flap === name ? [pattern.holes[place + 1]] : []));
  return flap === undefined ? [] : ofFlap.flatMap((hole, index) => {
    if (hole === undefined) return [];
    const label = plan.pins(name, index + 1);
    return [{ flap: name, pin: panelPin(kit, plan, label.id, label.place, chained(pose, moved([hole.at[0], hole.at[1], pattern.thickness]))) }];
  });
}

interface EdgePin {
  readonly parts: readonly Part[];
  readonly connection: Connection;
  readonly hole: BarHole;
}

/** Pins with nuts through an edge that is not folded and the bar under it. */
function pinnedEdge({ kit }: Surroundings, plan: PlannedWrap, side: Side, { bar }: SideBar, edge: EdgeBar | undefined, pose: Pose): readonly EdgePin[] {
  if (edge?.hold !== 'pin') return [];
  const [out, along] = [outwards(side), alongSide(side)];
  const half = dot(placed(undone(pose), bar.plan.from), out);
  return edgePins(kit, edge.from, edge.to).map((place, index) => {
    const own: Vec3 = [out[0] * half + along[0] * place, out[1] * half + along[1] * place, bar.plan.tube.outside / 2 + kit.practice.wrapClearance];
    const at = placed(pose, own);
    const label = plan.pins(edge.flap, index + 1);
    const head = bar.plan.tube.outside / 2 + kit.practice.wrapClearance + plan.panel.thickness;
    const parts = throughPin(kit, label, at, plan.face, pointed(pose, along), head, bar.plan.tube.outside);
    return {
      parts,
      connection: { is: 'pin', pin: label.id, nut: label.nut, holds: [plan.id, bar.plan.id], out: plan.face },
      hole: { bar: bar.plan.id, at: alongBar(bar, at), along: plan.face },
    };
  });
}
