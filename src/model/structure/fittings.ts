import { dimensionedText, isClip, type Fault, type FittingKind, type Kit } from '../../read/index.ts';
import { PARTS } from '../../parts/facts.ts';
import { plugFits } from '../open-ends.ts';
import { facing } from '../pose.ts';
import { BARB, BARBS } from '../solids/fitting.ts';
import type { Connection, Part, Pose, Shape, Vec3 } from '../types.ts';
import { cross, dot, lengthOf, minus, plus, squareTo, times } from '../vectors.ts';
import { faultAt, say } from './faults.ts';
import type { PanelHinge } from './flat.ts';
import type { BuiltBar, Made, PlannedFitting, PlannedPanel } from './types.ts';

/** A fitting with the kind of the kit and the bar it is on. */
interface Placed {
  readonly plan: PlannedFitting;
  readonly kind: FittingKind;
  readonly bar: BuiltBar;
}

const placedOn = (kit: Kit, fittings: readonly PlannedFitting[], bars: readonly BuiltBar[]): readonly Placed[] => fittings.flatMap((plan) => {
  const kind = kit.catalogue.fittings.find(({ name }) => name === plan.fitting);
  const bar = bars.find((each) => each.plan.id === plan.bar);
  return kind === undefined || bar === undefined ? [] : [{ plan, kind, bar }];
});

/** The hinges and stays of a panel, as its builder needs them. */
export function hingesOf(kit: Kit, panel: PlannedPanel, fittings: readonly PlannedFitting[], bars: readonly BuiltBar[]): readonly PanelHinge[] {
  return placedOn(kit, fittings, bars).flatMap(({ plan, kind, bar }) => {
    if (plan.panel !== panel.id || !isClip(kind)) return [];
    const leafWay = wayOfLeaf(panel, bar, bars);
    const barbs = BARBS.map((share) => ({
      at: plus(plus(plus(plan.at, times(bar.axis, (share * kind.width) / 2)), times(leafWay, kind.leaf - BARB.fromEnd)), times(panel.face, kind.reach)),
      diameter: BARB.diameter, depth: BARB.length,
    }));
    return [{ bar: bar.plan.id, reach: kind.reach, barbs }];
  });
}

/** From the hinge's bar towards the panel's other bars, square to its face. */
function wayOfLeaf(panel: PlannedPanel, bar: BuiltBar, bars: readonly BuiltBar[]): Vec3 {
  const across = cross(panel.face, bar.axis);
  const others = panel.is === 'flat' ? bars.filter(({ plan }) => plan.id !== bar.plan.id && panel.on.includes(plan.id)) : [];
  const middle = others.reduce((sum, other) => sum + dot(minus(other.plan.from, bar.plan.from), across), 0);
  return middle < 0 ? times(across, -1) : across;
}

/** Feet, castors, caps, brackets, hinges and stays. */
export function buildFittings(kit: Kit, fittings: readonly PlannedFitting[], bars: readonly BuiltBar[], panels: readonly PlannedPanel[], faults: Fault[]): Made {
  const made = placedOn(kit, fittings, bars).map((placed) => buildFitting(kit, placed, bars, panels, faults));
  return { parts: made.flatMap(({ parts }) => parts), connections: made.flatMap(({ connections }) => connections) };
}

function buildFitting(kit: Kit, placed: Placed, bars: readonly BuiltBar[], panels: readonly PlannedPanel[], faults: Fault[]): Made {
  const { plan: { id }, kind, bar } = placed;
  switch (kind.is) {
    case 'foot-plate':
    case 'castor': {
      tellPlug(kit, placed, kind, faults);
      const { pose, out } = inEnd(placed);
      return { parts: [partOf(placed, pose)], connections: [{ is: 'foot', foot: id, bar: bar.plan.id, out }] };
    }
    case 'end-cap': {
      tellPlug(kit, placed, kind, faults);
      const { pose, out } = inEnd(placed);
      return { parts: [partOf(placed, pose)], connections: [{ is: 'cap', cap: id, bar: bar.plan.id, out }] };
    }
    case 'wall-bracket': return buildBracket(placed, faults);
    case 'hinge':
    case 'lid-stay': return buildHinge(placed, bars, panels, faults);
  }
}

/** A plug that does not go into the tube, or falls out of it. */
function tellPlug(kit: Kit, { plan: { told, fitting }, bar: { plan: { tube } } }: Placed, plug: { readonly bore?: number | undefined }, faults: Fault[]): void {
  const inside = tube.outside - 2 * tube.wall;
  const bore = dimensionedText({ value: inside, dimension: 'length' });
  if (!plugFits(kit, plug, inside)) faults.push(faultAt(told, say.plugBore(fitting, bore), say.plugOf(bore)));
}

function partOf({ plan: { id, kind: partKind, place, group }, kind, bar: { plan: { tube } } }: Placed, pose: Pose): Part {
  const shape: Shape = { form: 'fitting', fitting: kind, outside: tube.outside, inside: tube.outside - 2 * tube.wall };
  return { id, kind: partKind, place, group, pose, mass: PARTS[partKind].mass(shape, 0), shape };
}

/** A plug in the end of the bar that is nearer; a wheel trails towards the item's x where it can. */
function inEnd({ plan, bar }: Placed): { readonly pose: Pose; readonly out: Vec3 } {
  const isFirst = lengthOf(minus(plan.at, bar.plan.from)) < lengthOf(minus(plan.at, bar.plan.to));
  const z = isFirst ? bar.axis : times(bar.axis, -1);
  const x = squareTo([1, 0, 0], z) ?? squareTo([0, 1, 0], z) ?? [0, 1, 0];
  return { pose: facing(plan.at, x, cross(z, x), z), out: times(z, -1) };
}

function buildBracket(placed: Placed, faults: Fault[]): Made {
  const { plan, bar } = placed;
  const y = squareTo(plan.face ?? [0, 1, 0], bar.axis);
  if (y === null || plan.face === null || Math.abs(dot(plan.face, bar.axis)) > 1e-3) faults.push(faultAt(plan.told, say.cableBeside, say.alongFace));
  const out = y ?? [0, 1, 0];
  return { parts: [partOf(placed, facing(plan.at, cross(out, bar.axis), out, bar.axis))], connections: [{ is: 'bracket', bracket: plan.id, bar: bar.plan.id, out }] };
}

/** The clip goes on the bar from the panel's side; the panel with the leaf turns about the bar's axis. */
function buildHinge(placed: Placed, bars: readonly BuiltBar[], panels: readonly PlannedPanel[], faults: Fault[]): Made {
  const { plan, bar } = placed;
  const panel = panels.find(({ id }) => id === plan.panel);
  const isOn = panel?.is === 'flat' && panel.on.includes(bar.plan.id);
  if (panel === undefined || !isOn || Math.abs(dot(panel.face, bar.axis)) > 1e-3) {
    faults.push(faultAt(plan.told, isOn ? say.hingeFace : bar.plan.id, say.hingeOn));
    return { parts: [], connections: [] };
  }
  const y = wayOfLeaf(panel, bar, bars);
  const pose = facing(plan.at, cross(y, panel.face), y, panel.face);
  const connection: Connection = { is: 'hinge', hinge: plan.id, leaves: [panel.id, bar.plan.id], axis: bar.axis, at: plan.at, out: panel.face };
  return { parts: [partOf(placed, pose)], connections: [connection] };
}
