import { dot, lengthOf, minus, placed, times, unit, type Connection, type Part } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { partHeap } from '../middle-of.ts';
import { partsOf } from '../parts.ts';
import { panelsOf, barsUnder, wayOf } from './bearings.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';
import type { BarLine } from './skeleton.ts';

type Hinged = Extract<Connection, { readonly is: 'hinge' }>;

/** A lid with what it turns on. */
interface Lid { readonly part: Part; readonly hinges: readonly Hinged[]; readonly stays: readonly { readonly part: Part; readonly moment: number }[] }

function lidsOf(given: StructureCase): readonly Lid[] {
  const { model, skeleton } = given;
  return model.places.filter(({ use }) => use === 'lid').flatMap((place) => panelsOf(skeleton, place)).map(({ part }) => {
    const hinges = model.connections.filter((held): held is Hinged => held.is === 'hinge' && held.leaves.includes(part.id));
    const fittings = partsOf(model, 'fitting').filter(({ id }) => hinges.some(({ hinge }) => hinge === id));
    return { part, hinges, stays: fittings.flatMap((stay) => stayOf(stay)) };
  });
}

const stayOf = (part: Part): Lid['stays'] => (part.shape.form === 'fitting' && part.shape.fitting.is === 'lid-stay'
  ? [{ part, moment: part.shape.fitting.grip * part.shape.fitting.leaf }] : []);

/** Farthest that the lid's middle of mass lies from its axis, mm: where it lies flat. */
function armOf({ part, hinges }: Lid): number {
  const [hinge] = hinges;
  if (hinge === undefined) return 0;
  const off = minus(partHeap(part).at, hinge.at);
  return lengthOf(minus(off, times(hinge.axis, dot(off, hinge.axis))));
}

/** What the stays hold against the lid's weight where it pulls most, N·m: it stays where it is put. 0 without a stay. */
export const lidHolds: StructureCheck = (given) => worst(lidsOf(given).map((lid) => {
  const { gravity, lidFactor } = given.limits;
  return judge({
    name: 'lid-holds', figure: lid.stays.reduce((sum, { moment }) => sum + moment, 0) / 1000, limit: (lidFactor.value * lid.part.mass * gravity.value * armOf(lid)) / 1000, bound: 'least', unit: 'N·m',
    source: `grip × leaf of the kit’s stays against weight × arm (C); ${lidFactor.source}`, parts: [lid.part.id, ...lid.stays.map(({ part }) => part.id)],
  });
}));

/** How far a lid's under face lies over a tube, straight down, mm; what lies between is folded round the tube. */
function overTube(given: StructureCase, { part }: Lid, bar: BarLine): number {
  const { practice, panel } = given.model.kit;
  const wrapped = given.model.connections.some((held) => held.is === 'wrap' && held.bar === bar.id);
  const up = unit(wayOf(part, [0, 0, 1]));
  const face = dot(minus(placed(part.pose, [0, 0, 0]), bar.from), up);
  return face - bar.outside / 2 - (wrapped ? practice.wrapClearance + panel.thickness : 0);
}

/** Tubes under the lid's rim: those it turns on, and all others as high as they are. */
function rimOf(given: StructureCase, { part, hinges }: Lid): { readonly hinged: readonly BarLine[]; readonly others: readonly BarLine[] } {
  const hinged = barsUnder(given.skeleton, part.id).filter(({ id }) => hinges.some(({ leaves }) => leaves.includes(id)));
  const level = hinged[0]?.from[2];
  const others = given.skeleton.bars.filter((bar) => !hinged.includes(bar) && level !== undefined && Math.abs(bar.from[2] - level) < 1 && Math.abs(bar.to[2] - level) < 1);
  return { hinged, others };
}

/** The gap along the hinges, mm: too narrow for a finger, or so wide that it comes out again at every angle. */
export const lidGaps: StructureCheck = (given) => {
  const { hingeLeast, hingeMost } = given.limits;
  return worst(lidsOf(given).flatMap((lid) => rimOf(given, lid).hinged.map((bar) => {
    const gap = overTube(given, lid, bar);
    const under = gap < (hingeLeast.value + hingeMost.value) / 2;
    return judge({
      name: 'lid-gap', figure: gap, limit: under ? hingeLeast.value : hingeMost.value, bound: under ? 'most' : 'least', unit: 'mm',
      source: `between ${hingeLeast.value} and ${hingeMost.value} mm along a hinge a finger is crushed, ${(under ? hingeLeast : hingeMost).source}`, parts: [lid.part.id, bar.id],
    });
  })));
};

/**
 * Open area under the shut lid on its second airiest side, mm²: a child shut in breathes, though one side stands against a
 * wall. A side counts by its length between the joints times the gap over it.
 */
export const lidVents: StructureCheck = (given) => {
  const { ventArea } = given.limits;
  return worst(lidsOf(given).map((lid) => {
    const areas = rimOf(given, lid).others.map((bar) => Math.max(0, overTube(given, lid, bar)) * lengthOf(minus(bar.to, bar.from))).toSorted((a, b) => b - a);
    return judge({
      name: 'lid-vent', figure: areas[1] ?? 0, limit: ventArea.value, bound: 'least', unit: 'mm²', source: `on each of two sides, none of them behind; ${ventArea.source}`, parts: [lid.part.id],
    });
  }));
};

/** How hard a shut lid is to lift at its front edge, N: half its weight, and what its stays hold. */
export const lidLifts: StructureCheck = (given) => worst(lidsOf(given).map((lid) => {
  const { gravity, lidLift } = given.limits;
  const reach = Math.max(1, 2 * armOf(lid));
  const figure = (lid.part.mass * gravity.value * armOf(lid) + lid.stays.reduce((sum, { moment }) => sum + moment, 0)) / reach;
  return judge({ name: 'lid-lift', figure, limit: lidLift.value, bound: 'most', unit: 'N', source: `weight and stays about the hinges (C); ${lidLift.source}`, parts: [lid.part.id] });
}));
