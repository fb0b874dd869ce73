import { dimensionedText, type Fault, type Kit } from '../../read/index.ts';
import type { Connection, Part, Pattern, Vec3 } from '../types.ts';

import { alongBar, buildBar, drilled, socketsOf } from './bars.ts';
import { buildCables } from './cables.ts';
import { faultAt, say, throwFaults } from './faults.ts';
import { buildFittings, hingesOf } from './fittings.ts';
import { buildFlat } from './flat.ts';
import { jointPart, pinParts, sleevePins, type JointNode, type SleevePin } from './joints.ts';
import { nodesOf } from './nodes.ts';
import { buildTray } from './tray.ts';
import type { Blueprint, BuiltBar, Node } from './types.ts';
import { buildWrapped, type BarHole, type BuiltPanel, type Surroundings } from './wrapped.ts';

/** Everything that a blueprint becomes. */
export interface BuiltStructure {
  readonly nodes: readonly Node[];
  readonly joints: readonly Part[];
  /** Tubes with the pins and nuts that hold them in their sleeves. */
  readonly bars: readonly { readonly built: BuiltBar; readonly pins: readonly Part[] }[];
  readonly panels: readonly BuiltPanel[];
  readonly cables: readonly Part[];
  readonly fittings: readonly Part[];
  readonly connections: readonly Connection[];
  readonly patterns: readonly { readonly pattern: Pattern; readonly partId: string }[];
}

/** Chooses joints, cuts tubes, lays panels, hooks cables and puts fittings on. Throws one FaultError with all that cannot be built. */
export function buildStructure(kit: Kit, blueprint: Blueprint): BuiltStructure {
  const faults: Fault[] = [];
  const nodes = nodesOf(kit, blueprint, faults);
  throwFaults(faults);
  const bare = blueprint.bars.map((bar) => buildBar(bar, nodes, faults));
  const around: Surroundings = { kit, bars: bare, nodes, panels: blueprint.panels, faults };
  const panels = blueprint.panels.flatMap((plan) => builtPanel(around, blueprint, plan) ?? []);
  const jointed = nodes.filter((node): node is JointNode => node.joint !== null);
  const pins = jointed.map((node) => sleevePins(node, bare, middleOf(bare)));
  const sleeves = pins.flat();
  faults.push(...pinFaults(kit, bare, sleeves));
  const bars = bare.map((bar) => drilled(bar, holesOf(kit, bar, sleeves, panels.flatMap(({ holes }) => holes))));
  const held = bars.map((built) => ({ built, ...pinsOf(kit, built, sleeves, nodes) }));
  const cables = buildCables(kit, blueprint.cables, nodes, faults);
  const fittings = buildFittings(kit, blueprint.fittings, bars, blueprint.panels, faults);
  if (!blueprint.isLenient || panels.length < blueprint.panels.length) throwFaults(faults);
  return {
    nodes, panels,
    joints: jointed.map((node, place) => jointPart(kit, node, pins[place] ?? [])),
    bars: held.map(({ built, parts }) => ({ built, pins: parts })),
    cables: cables.parts,
    fittings: fittings.parts,
    connections: [...bars.flatMap(socketsOf), ...held.flatMap(({ connections }) => connections), ...panels.flatMap(({ connections }) => connections), ...cables.connections, ...fittings.connections],
    patterns: panels.map(({ pattern, part }) => ({ pattern, partId: part.id })),
  };
}

function builtPanel(around: Surroundings, { fittings }: Blueprint, plan: Blueprint['panels'][number]): BuiltPanel | null {
  switch (plan.is) {
    case 'wrapped': return buildWrapped(around, plan);
    case 'flat': return buildFlat(around, plan, hingesOf(around.kit, plan, fittings, around.bars));
    case 'tray': return buildTray(around, plan);
  }
}

/** Middle of the box round all bars. */
function middleOf(bars: readonly BuiltBar[]): Vec3 {
  const points = bars.flatMap(({ plan }) => [plan.from, plan.to]);
  return [0, 1, 2].map((axis) => {
    const values = points.map((point) => point[axis] ?? 0);
    return (Math.min(...values) + Math.max(...values)) / 2;
  }) as unknown as Vec3;
}

/** A pin needs tube on both sides of it. */
function pinFaults(kit: Kit, bars: readonly BuiltBar[], sleeves: readonly SleevePin[]): readonly Fault[] {
  return sleeves.flatMap(({ bar: id, pin }) => {
    const bar = bars.find(({ plan }) => plan.id === id);
    if (bar === undefined || pin === null) return [];
    const at = alongBar(bar, pin.at);
    const beyond = Math.max(kit.jointPin.diameter - (at - bar.ends[0].stop), kit.jointPin.diameter - (bar.span - bar.ends[1].stop - at));
    return beyond <= 0 ? [] : [faultAt(bar.plan.told, say.pinBeyond, say.endLater(dimensionedText({ value: beyond, dimension: 'length' })))];
  });
}

function holesOf(kit: Kit, bar: BuiltBar, sleeves: readonly SleevePin[], panelHoles: readonly BarHole[]): readonly { readonly at: number; readonly along: Vec3; readonly diameter: number }[] {
  const diameter = kit.jointPin.diameter;
  const ofSleeves = inOrder(bar, sleeves).map(({ pin }) => ({ at: alongBar(bar, pin.at), along: pin.out, diameter }));
  return [...ofSleeves, ...panelHoles.filter((hole) => hole.bar === bar.plan.id).map(({ at, along }) => ({ at, along, diameter })).sort((a, b) => a.at - b.at)];
}

type Pinned = SleevePin & { readonly pin: NonNullable<SleevePin['pin']> };

/** The pinned sleeves of a bar from its beginning to its end. */
const inOrder = (bar: BuiltBar, sleeves: readonly SleevePin[]): readonly Pinned[] =>
  sleeves.filter((sleeve): sleeve is Pinned => sleeve.bar === bar.plan.id && sleeve.pin !== null).sort((a, b) => alongBar(bar, a.pin.at) - alongBar(bar, b.pin.at));

function pinsOf(kit: Kit, bar: BuiltBar, sleeves: readonly SleevePin[], nodes: readonly Node[]): { readonly parts: readonly Part[]; readonly connections: readonly Connection[] } {
  const own = sleeves.filter((sleeve) => sleeve.bar === bar.plan.id);
  const pinned = inOrder(bar, sleeves).map((sleeve, index) =>
    ({ sleeve, ...pinParts(kit, sleeve, sleeve.pin, outsideOf(sleeve, nodes), bar.plan.pins(index + 1)) }));
  return {
    parts: pinned.flatMap(({ parts }) => parts),
    connections: [
      ...own.map((sleeve): Connection => ({ is: 'sleeve', bar: sleeve.bar, joint: sleeve.joint, along: bar.axis })),
      ...pinned.map(({ connection }) => connection),
    ],
  };
}

/** Outside diameter of the sleeve that a pin goes through, mm. */
const outsideOf = ({ joint: id }: SleevePin, nodes: readonly Node[]): number =>
  nodes.find(({ joint }) => joint?.id === id)?.joint?.laid.kind.sleeveDiameter ?? 0;

