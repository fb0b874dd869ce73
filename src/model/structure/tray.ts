import { dimensionedText } from '../../read/index.ts';
import { PARTS } from '../../parts/facts.ts';
import { facetPose, lugPinPose } from '../patterns/facets.ts';
import { leastDepth, trayPattern, type TrayCorner, type TraySide } from '../patterns/tray.ts';
import { chained, moved, turned } from '../pose.ts';
import type { Connection, Part, Pattern, PatternFlap, Pose, Shape } from '../types.ts';
import { faultAt, say } from './faults.ts';
import { loopOf, poseInLoop, reachesOf } from './loops.ts';
import { heldByPin, panelPin } from './panel-pins.ts';
import type { BuiltBar, PlannedPanel } from './types.ts';
import { barsOf, type BuiltPanel, type Surroundings } from './wrapped.ts';

type PlannedTray = Extract<PlannedPanel, { is: 'tray' }>;

/** A box folded of one panel that hangs in a loop of four bars; null and told where it cannot. */
export function buildTray(around: Surroundings, plan: PlannedTray): BuiltPanel | null {
  const { kit, faults } = around;
  const bars = barsOf(around, plan.loop);
  const loop = loopOf(bars, plan.face);
  const tube = bars[0]?.plan.tube.outside ?? 0;
  const least = leastDepth(kit, plan.panel, tube);
  const odd = loop === null || bars.length !== 4 ? faultAt(plan.told, say.loop, say.rectangle)
    : bars.some(({ plan: { tube: own } }) => own.profile !== 'round' || own.outside !== tube) ? faultAt(plan.told, say.roundOnly, say.round)
      : plan.depth < least ? faultAt(plan.told, say.shallow(inMm(plan.depth)), say.deeper(inMm(least))) : null;
  if (loop === null || odd !== null) {
    if (odd !== null) faults.push(odd);
    return null;
  }
  const sides = loop.sides.map(({ side, out, bars: own }): TraySide => ({
    side, out, tube, wall: side,
    rims: own.filter(({ bar }) => plan.wrap.includes(bar.plan.id)).map((sideBar) => {
      const [before, after] = reachesOf(sideBar, kit.practice.notchGap);
      return { flap: side, from: sideBar.from + before, to: sideBar.to - after, reach: Math.min(before, after) };
    }),
  }));
  const pattern = trayPattern(kit, plan.panel, sides, plan.depth, cornerOf(around, bars));
  const pose = poseInLoop(loop, plan.depth);
  const names = pattern.flaps.flatMap(({ name, lugs }) => [name, ...lugs.map((lug) => lug.name)]);
  const shape: Shape = { form: 'folded', pattern, folding: Object.fromEntries(names.map((name) => [name, 1])) };
  const part: Part = {
    id: plan.id, kind: plan.kind, place: plan.place, group: plan.group, pose,
    shape, mass: PARTS[plan.kind].mass(shape, plan.panel.density),
  };
  const pins = pattern.flaps.flatMap((flap) => [...rimPins(around, plan, pattern, flap, pose), ...lugPins(around, plan, pattern, flap, pose)]);
  const wraps = loop.sides.flatMap(({ side, bars: own }) => own.filter(({ bar }) => plan.wrap.includes(bar.plan.id))
    .map(({ bar }): Connection => ({ is: 'wrap', panel: plan.id, flap: side, bar: bar.plan.id })));
  return { plan, pattern, part, pins: pins.map(({ pin }) => pin), connections: [...wraps, ...pins.map(({ pin, flap }) => heldByPin(pin, plan.id, flap))], holes: [] };
}

const inMm = (value: number): string => dimensionedText({ value, dimension: 'length' });

/** The widest socket and sleeve at the corners; a nut sits on the sleeve. */
function cornerOf({ kit, nodes }: Surroundings, bars: readonly BuiltBar[]): TrayCorner {
  const joints = bars.flatMap(({ ends }) => ends.map(({ joint }) => joint));
  const kinds = nodes.flatMap(({ joint }) => (joint !== null && joints.includes(joint.id) ? [joint.laid.kind] : []));
  return { socket: Math.max(...kinds.map(({ socketDiameter }) => socketDiameter)), nut: Math.max(...kinds.map(({ sleeveDiameter }) => sleeveDiameter)) / 2 + kit.jointPin.nutHeight };
}

interface TrayPin {
  readonly pin: Part;
  readonly flap: string;
}

/** A rim's tab lies on the outer face of its wall; the pins come from outside. */
function rimPins({ kit }: Surroundings, plan: PlannedTray, pattern: Pattern, flap: PatternFlap, pose: Pose): readonly TrayPin[] {
  return flap.pins.map((along, index) => {
    const face = chained(facetPose(pattern, flap, lowOf(pattern, flap, along), along, 1), moved([0, 0, -2 * pattern.thickness]), turned([1, 0, 0], Math.PI));
    const label = plan.pins(flap.name, index + 1);
    return { flap: flap.name, pin: panelPin(kit, plan, label.id, label.place, chained(pose, face)) };
  });
}

/** Of the two holes of a pin, the one in the wall: its distance from the root line. */
function lowOf(pattern: Pattern, flap: PatternFlap, along: number): number {
  const outs = pattern.holes.filter((hole) => hole.flap === flap.name && Math.abs(alongOf(flap, hole.at) - along) < 1e-6).map(({ at }) => outOf(flap, at));
  return Math.min(...outs);
}

const outOf = ({ side, root }: PatternFlap, [x, y]: readonly [number, number]): number =>
  ({ left: -x, right: x, front: -y, back: y })[side] - root;

const alongOf = ({ side }: PatternFlap, [x, y]: readonly [number, number]): number => (side === 'left' || side === 'right' ? y : x);

function lugPins({ kit }: Surroundings, plan: PlannedTray, pattern: Pattern, flap: PatternFlap, pose: Pose): readonly TrayPin[] {
  return flap.lugs.flatMap((lug) => lug.pins.map((_, index) => {
    const label = plan.pins(lug.name, index + 1);
    return { flap: lug.name, pin: panelPin(kit, plan, label.id, label.place, chained(pose, lugPinPose(pattern, flap, lug, index, 1, 1))) };
  }));
}
