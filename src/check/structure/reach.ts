import { dot, hasCaps, lengthOf, minus, placed, times, unit, type Part, type Vec3 } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { distance, idsOf, partsOf } from '../parts.ts';
import { markHeights } from '../children/size-mark.ts';
import { isNearChildren, standingOut } from '../rules.ts';
import { barsUnder, middleOf, wayOf } from './bearings.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';
import { lengthOfBar, onBar, type BarLine } from './skeleton.ts';
import { ringGaps } from './sleeves.ts';
import { alongLine, isParallel } from './vectors.ts';

interface Gap { readonly narrow: number; readonly parts: readonly string[]; readonly what: string }

/** Wider openings let a limb out again, mm. */
const WIDE = 120;

/** Openings between bars side by side, and between the edges of flat panels and the bars along them, mm. */
function gapsOf(given: StructureCase): readonly Gap[] {
  const { bars } = given.skeleton;
  const between = bars.flatMap((one, index) => bars.slice(index + 1).flatMap((other) => sideBySide(one, other)));
  const plates = partsOf(given.model, 'flat-panel').flatMap((plate) => {
    const own = barsUnder(given.skeleton, plate.id).map(({ id }) => id);
    return bars.filter(({ id }) => !own.includes(id)).flatMap((bar) => besidePlate(plate, bar));
  });
  return [...between, ...plates].filter(({ narrow }) => narrow > 0 && narrow < WIDE);
}

function sideBySide(one: BarLine, other: BarLine): readonly Gap[] {
  if (!isParallel(one.along, other.along) || !overlaps(one, other)) return [];
  const off = minus(other.from, one.from);
  const apart = lengthOf(minus(off, times(one.along, dot(off, one.along))));
  return [{ what: 'tube and tube', narrow: apart - (one.outside + other.outside) / 2, parts: [one.id, other.id] }];
}

function overlaps(one: BarLine, other: BarLine): boolean {
  const ends = [other.from, other.to].map((at) => alongLine(one.from, one.along, at));
  return Math.min(lengthOfBar(one), Math.max(...ends)) - Math.max(0, Math.min(...ends)) > 1;
}

/** From a flat panel's edge to a bar along it, outside the panel, straight across. */
function besidePlate(plate: Part, bar: BarLine): readonly Gap[] {
  const { shape } = plate;
  if (shape.form !== 'plate') return [];
  const axes = [{ way: unit(wayOf(plate, [1, 0, 0])), half: shape.width / 2 }, { way: unit(wayOf(plate, [0, 1, 0])), half: shape.height / 2 }] as const;
  const middle = placed(plate.pose, [0, 0, shape.thickness / 2]);
  return axes.flatMap(({ way, half }, index) => {
    const across = axes[1 - index];
    if (across === undefined || !isParallel(bar.along, way)) return [];
    const [a, b] = [bar.from, bar.to].map((at) => dot(minus(at, middle), way));
    if (Math.max(a ?? 0, b ?? 0) < -half || Math.min(a ?? 0, b ?? 0) > half) return [];
    const out = Math.abs(dot(minus(bar.from, middle), across.way)) - across.half;
    const off = Math.abs(dot(minus(bar.from, middle), unit(wayOf(plate, [0, 0, 1])))) - shape.thickness / 2;
    return out <= 0 ? [] : [{ what: 'panel and tube', narrow: Math.hypot(out, Math.max(0, off)) - bar.outside / 2, parts: [plate.id, bar.id] }];
  });
}

/** A finger is caught in a gap of 7 to 12 mm (see `finger-gap`). */
export const fingerGaps: StructureCheck = (given) => {
  const { declared, limits: { fingerLeast, fingerMost } } = given;
  if (!isNearChildren(declared)) return [];
  const grooves = ringGaps(given).filter(({ gap }) => gap > 0).map(({ gap, depth, ids }) => ({ narrow: gap, deep: depth, parts: ids }));
  const all = [...gapsOf(given).map(({ narrow, parts }) => ({ narrow, parts })), ...grooves.filter(({ narrow }) => narrow < WIDE)];
  return worst(all.map(({ narrow, parts }) => {
    const under = narrow < (fingerLeast.value + fingerMost.value) / 2;
    return judge({
      name: 'finger-gap', figure: narrow, limit: under ? fingerLeast.value : fingerMost.value, bound: under ? 'most' : 'least', unit: 'mm',
      source: `between ${fingerLeast.value} and ${fingerMost.value} mm a finger is caught, ${fingerLeast.source}`, parts,
    });
  }));
};

/** Gaps in which an arm or a leg is caught (see `limb-gap`); from memory, so never more than a caution. */
export const limbGaps: StructureCheck = (given) => {
  const { declared, limits: { limbLeast, limbMost } } = given;
  if (!isNearChildren(declared)) return [];
  return worst(gapsOf(given).map(({ what, narrow, parts }) => {
    const under = narrow < (limbLeast.value + limbMost.value) / 2;
    return judge({
      name: 'limb-gap', figure: narrow, limit: under ? limbLeast.value : limbMost.value, bound: under ? 'most' : 'least', unit: 'mm',
      source: `between ${limbLeast.value} and ${limbMost.value} mm a limb is caught, ${limbLeast.source}; between ${what}`, parts, otherwise: 'caution',
    });
  }));
};

interface Mouth { readonly is: 'stud' | 'socket'; readonly at: Vec3; readonly reach: number }

/** Studs and sockets of a joint, where they end and how far they stand out of its ring, mm. */
function mouthsOf(part: Part): readonly Mouth[] {
  const { shape } = part;
  const end = (axis: Vec3, reach: number): Vec3 => placed(part.pose, times(axis, reach));
  if (shape.form === 'joint') {
    const { studReach, stop, socketDepth, sleeveDiameter } = shape.joint;
    return ([[1, 0, 0], [0, 1, 0]] as const).flatMap((axis): readonly Mouth[] => [
      { is: 'socket', at: end(axis, stop + socketDepth / 2), reach: stop + socketDepth - sleeveDiameter / 2 },
      { is: 'stud', at: end(times(axis, -1), studReach), reach: studReach - sleeveDiameter / 2 },
    ]);
  }
  if (shape.form !== 'ported-joint') return [];
  return shape.joint.ports.flatMap((port): readonly Mouth[] => {
    if (port.is === 'sleeve') return [];
    return [port.is === 'stud' ? { is: 'stud', at: end(port.axis, port.reach), reach: port.reach - shape.joint.sleeveDiameter / 2 }
      : { is: 'socket', at: end(port.axis, port.stop + port.depth / 2), reach: port.stop + port.depth - shape.joint.sleeveDiameter / 2 }];
  });
}

/** A cable's loop lies on its stud nearer than this to the stud's end, mm. */
const ON_STUD = 40;

/** How far what a joint has and nothing uses stands out of it, mm (see `snag-point`). */
export const snags: StructureCheck = (given) => {
  const { model, skeleton } = given;
  const snag = standingOut(given);
  const loops = partsOf(model, 'cable').flatMap(({ shape, pose }) => (shape.form === 'cable' ? [placed(pose, [0, 0, 0]), placed(pose, [shape.length, 0, 0])] : []));
  const used = ({ is, at }: Mouth): boolean => (is === 'stud' ? model.kit.caps?.studs === true || loops.some((loop) => distance(loop, at) < ON_STUD) : skeleton.bars.some((bar) => holdsPlace(bar, at)));
  const bare = partsOf(model, 'joint').flatMap((joint) => mouthsOf(joint).filter((mouth) => !used(mouth)).map(({ reach }) => ({ id: joint.id, reach })));
  return [judge({
    name: 'snag-point', figure: Math.max(0, ...bare.map(({ reach }) => reach)), limit: snag.value, bound: 'most', unit: 'mm', source: snag.source,
    parts: bare.length > 0 ? [...new Set(bare.map(({ id }) => id))] : idsOf(model, 'joint'), otherwise: 'caution',
  })];
};

function holdsPlace(bar: BarLine, at: Vec3): boolean {
  const along = alongLine(bar.from, bar.along, at);
  return along > -1 && along < lengthOfBar(bar) + 1 && distance(onBar(bar, along), at) < bar.outside / 2;
}

/** Open ends of sawn tubes within reach: in no socket, under no cap, not on the floor. The work caps them, unless the kit has no caps for them. */
export const openEnds: StructureCheck = (given) => {
  const { model, skeleton, contacts, limits } = given;
  const closed = model.connections.flatMap((held) => (held.is === 'cap' || held.is === 'foot' ? [{ bar: held.bar, out: held.out }] : []));
  const open = hasCaps(model) ? [] : skeleton.bars.flatMap((bar) => ([-1, 1] as const).flatMap((way) => {
    const at = way < 0 ? 0 : lengthOfBar(bar);
    const capped = closed.some((cap) => cap.bar === bar.id && dot(cap.out, bar.along) * way > 0.5);
    const held = bar.holds.some((hold) => hold.by === 'socket' && (way < 0 ? hold.at < 1 : hold.at > lengthOfBar(bar) - 1));
    const stands = contacts.some((contact) => contact.bar === bar.id && Math.abs(contact.at - at) < 1);
    return capped || held || stands ? [] : [bar.id];
  }));
  return [judge({
    name: 'tube-ends', figure: open.length, limit: limits.openEnds.value, bound: 'most', unit: '1', source: limits.openEnds.source,
    parts: open.length > 0 ? [...new Set(open)] : skeleton.bars.map(({ id }) => id), otherwise: 'caution',
  })];
};

/** The heights of a size mark (see `size-mark`). */
export const marks: StructureCheck = (given) => {
  const { model, declared: { mark }, limits: { markTolerance }, bearings } = given;
  if (mark === null || (model.use !== 'seat' && model.use !== 'table')) return [];
  const right = markHeights[model.use][mark];
  return right === undefined ? [] : worst(bearings.filter(({ place: { use } }) => use === model.use).map((bearing) => judge({
    name: 'size-mark', figure: Math.abs(Math.max(...model.deckTops.filter((top) => top >= middleOf(bearing)[2] - 50)) - right), limit: markTolerance.value, bound: 'most', unit: 'mm',
    source: `${right} mm for mark ${mark}, EN 1729-1 (R2); ${markTolerance.source}`, parts: [bearing.panel.id], otherwise: 'caution',
  })));
};

/** A bed of points and bars is not judged: guards are measured on decks and frames only. */
export const beds: StructureCheck = ({ model, limits: { guardSides } }) => (model.places.some(({ use }) => use === 'bed') || model.use === 'bed'
  ? [judge({ name: 'guard-sides', figure: 0, limit: guardSides.value, bound: 'least', unit: '1', source: `${guardSides.source}; guards are measured on beds of decks, frames and panels only`, parts: idsOf(model, 'panel', 'flat-panel') })]
  : []);
