import { addBit, bitsOf, common, countOf, emptyBits, hasBit, indicesOf, isEmpty, keyOf, meets, sameBits, union, without, type Bits } from './bits.ts';
import { oppositeWay } from './blocking.ts';
import { closedIn } from './closed.ts';
import { piecesIn, type FlapFacts, type Ground } from './ground.ts';
import { isFlatPanel } from './pieces.ts';
import { parallel, sameWay } from './vectors.ts';
import { dot, type Vec3 } from '../../model/index.ts';
import type { Unit } from './units.ts';
import type { Link } from './links.ts';

/** A piece that leaves in a cut, and the way it goes. */
export interface Leaving {
  readonly set: Bits;
  readonly way: Vec3;
}

/** One way to take a set apart a step further; seen forwards, one step of building. */
export interface Cut {
  readonly kind: 'part' | 'unpin' | 'unrow' | 'unfold' | 'unhook';
  /** In the order in which they leave. */
  readonly leaving: readonly Leaving[];
  /** What is left; more than one piece may lie there. */
  readonly rest: readonly Bits[];
  /** All that is left, as one set. */
  readonly restBits: Bits;
  /** Links that the cut undoes. */
  readonly undoes: readonly Link[];
  /** For a flap: which one. */
  readonly flap: FlapFacts | null;
  /** Rules of good practice that it breaks; none unless the designer's wishes ask for it. */
  readonly breaks: number;
}

/**
 * All cuts of a set that geometry allows, in tiers: those of a later tier go against good practice and are for sets that
 * come apart in no other way. `byWish` the designer asks for another order: then what practice would not do yet has tiers too.
 */
export function cutsOf(ground: Ground, set: Bits, byWish: boolean): readonly (readonly Cut[])[] {
  const alone = byItself(ground, set, byWish);
  if (alone.length > 0 && !byWish) return alone.slice(0, 1);
  return [...alone, ...openCuts(ground, set, byWish).map((tier) => (alone.length === 0 ? tier : tier.map(against)))];
}

const against = (one: Cut): Cut => ({ ...one, breaks: one.breaks + 1 });

/** What nothing else is done before: cables, caps, a flap and its pins, panels that just lie there; the first of them by practice. */
function byItself(ground: Ground, set: Bits, byWish: boolean): readonly (readonly Cut[])[] {
  const found: (readonly Cut[])[] = [];
  const add = (cuts: readonly Cut[]): boolean => found.push(found.length === 0 ? cuts : cuts.map(against)) > 0 && !byWish;
  const cables = unitsIn(ground, common(set, ground.cables), () => true);
  if (cables.length > 0 && add(byWish ? faces(ground, set, cables) : unhooked(ground, set, cables))) return found;
  const capped = uncapped(ground, set);
  if (capped.length > 0 && add(capped)) return found;
  const midway = ground.flaps.filter((flap) => isMidway(flap, set));
  if (midway.length > 0 && add(midway.flatMap((flap) => flapCuts(ground, set, flap)))) return found;
  const laid = platesLaid(ground, set);
  if (laid.length > 0) add(laid);
  return found;
}

function openCuts(ground: Ground, set: Bits, byWish: boolean): readonly (readonly Cut[])[] {
  const flaps = panelsIn(ground, set).flatMap((own) => flapsCuts(ground, set, own, byWish));
  const parted = partings(ground, set);
  const inTiers = (first: readonly Cut[], counts: (one: Cut) => boolean): readonly (readonly Cut[])[] => {
    const [usual, fewer] = [parted.usual.filter(counts), parted.fewer.filter(counts)];
    return byWish ? [[...first, ...usual, ...fewer]] : [[...first, ...usual], fewer];
  };
  if (!ground.links.some(({ is, a, b }) => is === 'sleeve' && hasBit(set, a) && hasBit(set, b))) return inTiers([...unpinned(ground, set), ...flaps], () => true);
  return [...inTiers(unpinned(ground, set), keepsFlat), ...inTiers(flaps, (one) => !keepsFlat(one))];
}

/** Frames are closed and wrapped lying flat, before they go on posts. */
const keepsFlat = ({ undoes }: Cut): boolean => !undoes.some(({ is }) => is === 'socket' || is === 'wrap');

const unitsIn = (ground: Ground, set: Bits, wanted: (ground: Ground, unit: Unit) => boolean): readonly Unit[] =>
  indicesOf(set).flatMap((index) => ground.units.all[index] ?? []).filter((unit) => wanted(ground, unit));

function undone(ground: Ground, set: Bits, out: Bits): readonly Link[] {
  const found: Link[] = [];
  for (const link of ground.links) {
    if (hasBit(out, link.a) !== hasBit(out, link.b) && hasBit(set, link.a) && hasBit(set, link.b)) found.push(link);
  }
  return found;
}

/** A cut that leaves the rest in one or more pieces. */
function cut(ground: Ground, set: Bits, kind: Cut['kind'], leaving: readonly Leaving[], flap: FlapFacts | null = null): Cut {
  const out = leaving.reduce((all, { set: own }) => union(all, own), emptyBits(ground.size));
  const restBits = without(set, out);
  return { kind, leaving, restBits, rest: piecesIn(ground, restBits, false), undoes: undone(ground, set, out), flap, breaks: 0 };
}

const single = (ground: Ground, unit: Unit, way: Vec3): Leaving => ({ set: bitsOf(ground.size, [unit.index]), way });

/** By wish: any face may go next; the one that practice would take costs nothing more. */
function faces(ground: Ground, set: Bits, cables: readonly Unit[]): readonly Cut[] {
  const usual = unhooked(ground, set, cables);
  const all = ground.blocking.ways.flatMap((way) => {
    const own = cables.filter((cable) => hookWay(ground, cable, way));
    return own.length === 0 ? [] : unhooked(ground, set, own);
  });
  const known = new Set(usual.map(({ restBits }) => keyOf(restBits)));
  return [...usual, ...all.filter(({ restBits }) => !known.has(keyOf(restBits))).map((each) => ({ ...each, breaks: 1 }))];
}

/** The cuts of a panel's flaps; by wish those of other flaps than practice would take. */
function flapsCuts(ground: Ground, set: Bits, flaps: readonly FlapFacts[], byWish: boolean): readonly Cut[] {
  const usual = nextFlaps(flaps, set);
  const others = byWish ? [...flaps].reverse().filter((flap) => hasBit(set, flap.folded.index) && !usual.includes(flap)) : [];
  return [
    ...usual.flatMap((flap) => flapCuts(ground, set, flap)),
    ...others.flatMap((flap) => flapCuts(ground, set, flap)).map((each) => ({ ...each, breaks: each.breaks + 1 })),
  ];
}

/** Cables go first, all of one face at once, the ones that lie over others before these. */
function unhooked(ground: Ground, set: Bits, cables: readonly Unit[]): readonly Cut[] {
  const ways = ground.blocking.ways.filter((way) => cables.some((cable) => hookWay(ground, cable, way)));
  const shortest = Math.min(...cables.map((cable) => spanOf(cable)));
  const last = [...cables].reverse().find((cable) => spanOf(cable) < shortest + AS_LONG);
  return ways.filter((way) => last !== undefined && hookWay(ground, last, way)).flatMap((way): readonly Cut[] => {
    const own = cables.filter((cable) => hookWay(ground, cable, way));
    const leaving: Leaving[] = [];
    let left = set;
    for (let found = true; found;) {
      const next = own.filter((cable) => hasBit(left, cable.index) && !meets(blockersAt(ground, way, cable.index), left));
      found = next.length > 0;
      leaving.push(...next.map((cable) => single(ground, cable, way)));
      left = without(left, bitsOf(ground.size, next.map(({ index }) => index)));
    }
    return leaving.length === own.length ? [cut(ground, set, 'unhook', leaving)] : [];
  });
}

/** Caps go before all else but cables: put on last, they are in nobody's way. All that are free at once, alone or with what stands in other ends. */
function uncapped(ground: Ground, set: Bits): readonly Cut[] {
  const free = (is: 'cap' | 'foot'): readonly Leaving[] => ground.links.flatMap((link): readonly Leaving[] => {
    if (link.is !== is || !hasBit(set, link.a) || !hasBit(set, link.b)) return [];
    const [unit, way] = [ground.units.all[link.a], ground.blocking.ways.find((each) => link.free.some((own) => sameWay(own, each)))];
    if (unit === undefined || way === undefined) return [];
    return meets(blockersAt(ground, way, link.a), set) ? [] : [single(ground, unit, way)];
  });
  const [caps, feet] = [free('cap'), free('foot')];
  if (caps.length === 0) return [];
  return [caps, ...(feet.length > 0 ? [[...caps, ...feet]] : [])].map((leaving) => cut(ground, set, 'part', leaving)).filter(({ restBits }) => !isEmpty(restBits));
}

/** How far a cable goes across, mm. */
const spanOf = ({ pieces }: Unit): number =>
  Math.hypot(...[0, 1].map((axis) => Math.max(...pieces.map(({ max }) => max[axis] ?? 0)) - Math.min(...pieces.map(({ min }) => min[axis] ?? 0))));

const hookWay = (ground: Ground, cable: Unit, way: Vec3): boolean =>
  (ground.linksAt[cable.index] ?? []).some(({ is, a, free }) => is === 'hook' && a === cable.index && free.some((out) => dot(out, way) > 0.999));

function blockersAt(ground: Ground, way: Vec3, index: number): Bits {
  const at = ground.blocking.ways.indexOf(way);
  return ground.blocking.out[at]?.[index] ?? emptyBits(ground.size);
}

/** A flap that is folded but not pinned: nothing else is done to its panel. */
const isMidway = ({ folded, row }: FlapFacts, set: Bits): boolean => row !== null && hasBit(set, folded.index) && !hasBit(set, row);

/** Its pins first, then the flap itself. */
function flapCuts(ground: Ground, set: Bits, flap: FlapFacts): readonly Cut[] {
  const nothing = emptyBits(ground.size);
  const unit = flap.row !== null && hasBit(set, flap.row) ? ground.units.all[flap.row] : undefined;
  if (unit?.is !== 'row') return meets(ground.foldBlocks.get(flap.folded.index) ?? nothing, set) ? [] : [unfoldCut(ground, set, flap)];
  return meets(ground.blocking.own[unit.index] ?? nothing, set) ? [] : [cut(ground, set, 'unrow', [single(ground, unit, unit.out)], flap)];
}

/** What is left has the same flap lying flat. */
function unfoldCut(ground: Ground, set: Bits, flap: FlapFacts): Cut {
  const rest = without(set, bitsOf(ground.size, [flap.folded.index]));
  addBit(rest, flap.flat);
  return {
    kind: 'unfold', leaving: [{ set: bitsOf(ground.size, [flap.folded.index]), way: flap.along }], restBits: rest,
    rest: piecesIn(ground, rest, false), undoes: undone(ground, set, bitsOf(ground.size, [flap.folded.index])), flap, breaks: 0,
  };
}

/** The flaps of each panel that is there. */
function panelsIn(ground: Ground, set: Bits): readonly (readonly FlapFacts[])[] {
  const panels = [...new Set(ground.flaps.filter(({ panel }) => hasBit(set, panel)).map(({ panel }) => panel))];
  return panels.map((panel) => ground.flaps.filter((flap) => flap.panel === panel));
}

/** Sides are as long as one another up to this, mm. */
const AS_LONG = 1;

/**
 * The flaps that may be undone next: the last to be wrapped are the longest; the other of a pair follows at once; of
 * pairs as long as each other the one that the pattern lists last.
 */
function nextFlaps(flaps: readonly FlapFacts[], set: Bits): readonly FlapFacts[] {
  const folded = flaps.filter((flap) => hasBit(set, flap.folded.index));
  const opposite = (flap: FlapFacts): FlapFacts | undefined => flaps.find((other) => other !== flap && parallel(other.along, flap.along));
  const begun = folded.find((flap) => {
    const other = opposite(flap);
    return other !== undefined && !hasBit(set, other.folded.index);
  });
  if (begun !== undefined) return [begun];
  const longest = Math.max(...folded.map(({ length }) => length));
  return folded.filter(({ length }) => length > longest - AS_LONG).slice(-1);
}

type Fastener = Extract<Unit, { is: 'fastener' }>;

/** Pins with nuts: all that leave the same way from things of the same kind, at once; those of flat panels first, for these were the last to be pinned. */
function unpinned(ground: Ground, set: Bits): readonly Cut[] {
  const free = unitsIn(ground, set, (_, unit) => unit.is === 'fastener' && !meets(ground.blocking.own[unit.index] ?? emptyBits(ground.size), set))
    .filter((unit): unit is Fastener => unit.is === 'fastener');
  const onPlates = free.filter((pin) => plateHeld(ground, pin) !== null);
  return alikePins(ground, onPlates.length > 0 ? onPlates : free).reverse()
    .map((pins) => cut(ground, set, 'unpin', pins.map((pin) => single(ground, pin, pin.connection.out))));
}

/** Pins of one flat panel go together, those of bars in sleeves by their way. */
function alikePins(ground: Ground, pins: readonly Fastener[]): (readonly Fastener[])[] {
  const groups = new Map<string, readonly Fastener[]>();
  for (const pin of pins) {
    const group = JSON.stringify([plateHeld(ground, pin), pin.connection.out.map((value) => value.toFixed(3))]);
    groups.set(group, [...(groups.get(group) ?? []), pin]);
  }
  return [...groups.values()];
}

const plateHeld = (ground: Ground, { connection }: Fastener): string | null => connection.holds.find((id) => isPlate(ground, id)) ?? null;

const isPlate = (ground: Ground, id: string): boolean => isFlatPanel(ground.units.parts.get(id)?.shape);

/** Flat panels that just lie on their bars, their pins drawn: nothing else is done before they are off. */
function platesLaid(ground: Ground, set: Bits): readonly Cut[] {
  const laid = unitsIn(ground, set, (_, unit) => unit.is === 'part' && isPlate(ground, unit.parts[0] ?? '') && !isPinned(ground, unit, set));
  return laid.flatMap((plate) => offWays(ground, plate).flatMap((way): readonly Cut[] => {
    const table = ground.blocking.ways.indexOf(way);
    const blockers = ground.blocking.off.get(plate.index)?.[table] ?? emptyBits(ground.size);
    return meets(blockers, set) ? [] : [cut(ground, set, 'part', [single(ground, plate, way)])];
  })).filter(({ restBits }) => !isEmpty(restBits));
}

const isPinned = (ground: Ground, plate: Unit, set: Bits): boolean =>
  (ground.linksAt[plate.index] ?? []).some(({ is, a }) => is === 'pin' && hasBit(set, a));

const offWays = (ground: Ground, plate: Unit): readonly Vec3[] =>
  ground.blocking.ways.filter((way) => (ground.linksAt[plate.index] ?? []).some(({ is, a, free }) => is === 'lay' && a === plate.index && free.some((out) => dot(out, way) > 0.999)));

/** Sets that leave along a way with all that blocks them. */
interface Partings {
  readonly usual: readonly Cut[];
  /** Fewer of some alike ones than a builder would take at once: for sets that come apart in no other way. */
  readonly fewer: readonly Cut[];
}

function partings(ground: Ground, set: Bits): Partings {
  const known = new Set<string>();
  const cutsFor = (offers: readonly (readonly Leaving[])[]): readonly Cut[] => offers.flatMap((leaving) => {
    const key = leaving.map(({ set: own, way }) => `${keyOf(own)}${ground.blocking.ways.indexOf(way)}`).join(';');
    if (known.has(key)) return [];
    known.add(key);
    const made = cut(ground, set, 'part', leaving);
    return isEmpty(made.restBits) ? [] : [made];
  });
  const loose = ground.blocking.ways.map((_, way) => loosest(ground, set, way));
  const groups = loose.flatMap((first, way) => peeled(ground, set, way, first).map((layers) => offersOf(ground, layers, way)));
  return {
    usual: cutsFor([...groups.flatMap(({ usual }) => usual), ...bothWays(ground, set, loose)]),
    fewer: cutsFor(groups.flatMap(({ fewer }) => fewer)),
  };
}

/** The smallest sets that leave along a way: each blocked by nothing but itself, and hanging together. */
function loosest(ground: Ground, set: Bits, way: number): readonly Bits[] {
  return closedIn(ground.blocking.out[way] ?? [], set, ground.size)
    .filter((one) => !sameBits(one, set) && (countOf(one) === 1 || piecesIn(ground, one, false).length === 1));
}

/** Alike sets that leave along a way, in layers: what a layer uncovers follows it. */
type Layers = readonly (readonly Bits[])[];

function peeled(ground: Ground, set: Bits, way: number, first: readonly Bits[]): readonly Layers[] {
  const kinds = new Map<string, Bits[]>();
  for (const one of first) {
    const kind = lookOf(ground, one);
    kinds.set(kind, [...(kinds.get(kind) ?? []), one]);
  }
  return [...kinds].map(([kind, outer]) => {
    const layers: (readonly Bits[])[] = [];
    let left = set;
    for (let layer: readonly Bits[] = outer; layer.length > 0;) {
      layers.push(layer);
      left = layer.reduce(without, left);
      layer = isEmpty(left) || countOf(outer[0] ?? left) < 2 ? [] : loosest(ground, left, way).filter((one) => lookOf(ground, one) === kind);
    }
    return layers;
  });
}

const lookOf = (ground: Ground, set: Bits): string =>
  indicesOf(set).map((index) => ground.units.all[index]?.look ?? 0).sort((a, b) => a - b).join(' ');

/** Usual: all layers, all but the last one, and of one layer those at one side of the item; feet stay together. Fewer: feet of one side, one alone. */
function offersOf(ground: Ground, layers: Layers, way: number): Readonly<Record<keyof Partings, readonly (readonly Leaving[])[]>> {
  const direction = ground.blocking.ways[way] ?? [0, 0, 1];
  const leaving = (sets: readonly Bits[]): readonly Leaving[] => sets.map((set) => ({ set, way: direction }));
  const [first = []] = layers;
  const sides = first.length < 2 ? [] : ground.blocking.ways.flatMap((side, at) => (parallel(side, direction) ? [] : [leaving(outermost(ground, first, at))]));
  const feet = first.every((one) => isFoot(ground, one));
  return {
    usual: [leaving(layers.flat()), ...(layers.length > 1 ? [leaving(layers.slice(0, -1).flat())] : []), ...(feet ? [] : sides)],
    fewer: [...(feet ? sides : []), ...first.map((one) => leaving([one]))],
  };
}

/** Whether a set is but a foot. */
const isFoot = (ground: Ground, set: Bits): boolean => indicesOf(set).every((index) => (ground.linksAt[index] ?? []).every(({ is, a }) => is === 'foot' && a === index));

/** Those of some sets that stand farthest to a side, told by its way. */
function outermost({ places }: Ground, sets: readonly Bits[], side: number): readonly Bits[] {
  const own = sets.map((set) => Math.max(...indicesOf(set).map((index) => places[side]?.[index] ?? 0)));
  const most = Math.max(...own);
  return sets.filter((_, index) => (own[index] ?? 0) > most - AS_LONG);
}

/** Alike sets that leave one thing by one mouth each, one way and its opposite: both ends of a tube. */
function bothWays(ground: Ground, set: Bits, loose: readonly (readonly Bits[])[]): readonly (readonly Leaving[])[] {
  return ground.blocking.ways.flatMap((direction, way) => {
    if (way % 2 === 1) return [];
    const back = ground.blocking.ways[oppositeWay(way)] ?? direction;
    const [forth, others] = [loose[way] ?? [], loose[oppositeWay(way)] ?? []];
    return forth.flatMap((one) => others
      .filter((other) => !meets(one, other) && lookOf(ground, one) === lookOf(ground, other) && sameMouth(ground, set, one, other))
      .map((other): readonly Leaving[] => [{ set: one, way: direction }, { set: other, way: back }]));
  });
}

function sameMouth(ground: Ground, set: Bits, one: Bits, other: Bits): boolean {
  const [first, second] = [one, other].map((own) => indicesOf(common(without(set, own), nearTo(ground, own))));
  return first?.length === 1 && second?.length === 1 && first[0] === second[0];
}

const nearTo = (ground: Ground, set: Bits): Bits => indicesOf(set).reduce((all, index) => union(all, ground.near[index] ?? all), emptyBits(ground.size));
