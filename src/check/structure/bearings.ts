import { dot, lengthOf, minus, placed, unit, type CutPattern, type Part, type Vec3 } from '../../model/index.ts';
import { panelKinds, type PanelKind, type Place, type Use } from '../../read/index.ts';
import type { Strip } from '../formulas/sandwich.ts';
import type { Limits } from '../limits.ts';
import { rulesOf, type Rules } from '../rules.ts';
import { lengthOfBar, onBar, type BarLine, type Skeleton } from './skeleton.ts';
import { alongLine, isParallel, middle } from './vectors.ts';

/** Two opposite bars under a panel and the strip of panel from one to the other. */
export interface Pair {
  readonly bars: readonly [BarLine, BarLine];
  /** From joint to joint along the bars, the longer one, mm. */
  readonly reach: number;
  readonly strip: Strip;
}

/** A panel in use: what bears it, and what it is tested with. */
export interface Bearing {
  readonly place: Place;
  readonly panel: Part;
  readonly pattern: CutPattern;
  readonly kind: PanelKind;
  readonly rules: Rules;
  readonly pairs: readonly Pair[];
  /** Bars that bear it alone, opposite none: a tray's front rim. */
  readonly lone: readonly BarLine[];
  /** N on the whole panel, and on one place of it. */
  readonly load: number;
  readonly placed: number;
  /** Of the load that the place is tested with, how much that is. */
  readonly share: number;
  /** How far it stands out over the axes of its bars, mm. */
  readonly overhang: number;
}

/** The use of an item by whose rules a place is judged. */
const RULES_OF = { seat: 'seat', backrest: 'seat', table: 'table', shelf: 'storage', box: 'storage', bed: 'bed', lid: 'table', screen: 'storage' } as const satisfies Record<Place['use'], Use>;

export const rulesAt = ({ model }: Skeleton, limits: Limits, { use }: Pick<Place, 'use'>): Rules =>
  rulesOf({ model: { ...model, use: RULES_OF[use] }, limits });

/** Every panel that something stands on, lies in or sits on. Backs and screens are pushed instead. */
export function bearingsOf(skeleton: Skeleton, limits: Limits): readonly Bearing[] {
  return skeleton.model.places.filter(({ use }) => use !== 'backrest' && use !== 'screen')
    .flatMap((place) => panelsOf(skeleton, place).map((found) => bearingOf(skeleton, limits, place, found)));
}

export interface FoundPanel {
  readonly part: Part;
  readonly pattern: CutPattern;
}

export const panelsOf = ({ model }: Skeleton, { panels }: Place): readonly FoundPanel[] => panels.flatMap((id) => {
  const part = model.parts.find((each) => each.id === id);
  const pattern = model.patterns.find(({ partIds }) => partIds.includes(id));
  return part && pattern ? [{ part, pattern }] : [];
});

/** A direction of a panel's own in the item's coordinates. */
export const wayOf = ({ pose }: Part, own: Vec3): Vec3 => minus(placed(pose, own), placed(pose, [0, 0, 0]));

/** Bars that a panel lies on, is folded round, is pinned to or turns on. */
export function barsUnder({ model, bars }: Skeleton, panel: string): readonly BarLine[] {
  const ids = model.connections.flatMap((held): readonly string[] => {
    if ((held.is === 'lay' || held.is === 'wrap') && held.panel === panel) return [held.bar];
    return held.is === 'hinge' && held.leaves.includes(panel) ? held.leaves : [];
  });
  return bars.filter(({ id }) => ids.includes(id));
}

function bearingOf(skeleton: Skeleton, limits: Limits, place: Place, { part, pattern }: FoundPanel): Bearing {
  const [usual] = panelKinds(skeleton.model.kit);
  const kind = panelKinds(skeleton.model.kit).find(({ name }) => name === pattern.panel) ?? usual;
  if (kind === undefined) throw new Error('a kit has a panel');
  const under = place.use === 'lid' ? lidBars(skeleton, part) : barsUnder(skeleton, part.id);
  const pairs = ([[1, 0, 0], [0, 1, 0]] as const).flatMap((own) => pairOf(under, part, pattern, kind, own));
  return {
    place, panel: part, pattern, kind, pairs, rules: rulesAt(skeleton, limits, place),
    lone: under.filter(({ id }) => !pairs.some(({ bars }) => bars.some((bar) => bar.id === id))),
    ...loadOn(place, limits, longest(pairs)), share: 1,
    overhang: pattern.form === 'flat' ? 0 : kind.thickness + skeleton.model.kit.practice.wrapClearance + (under[0]?.outside ?? 0) / 2,
  };
}

/** A lid turns on one bar and, shut, rests on the nearest one opposite. */
function lidBars(skeleton: Skeleton, lid: Part): readonly BarLine[] {
  const own = barsUnder(skeleton, lid.id);
  const [hinged] = own;
  if (hinged === undefined || own.length > 1) return own;
  const at = placed(lid.pose, [0, 0, 0]);
  const off = (bar: BarLine): Vec3 => minus(middle(bar.from, bar.to), at);
  const opposite = skeleton.bars.filter((bar) => bar.id !== hinged.id && isParallel(bar.along, hinged.along) && dot(off(bar), off(hinged)) < 0)
    .toSorted((a, b) => lengthOf(off(a)) - lengthOf(off(b)));
  return [...own, ...opposite.slice(0, 1)];
}

const longest = (pairs: readonly Pair[]): number => Math.max(0, ...pairs.map(({ reach }) => reach));

/** What a place is tested with, N, on all of it and in one spot. */
function loadOn({ use, load }: Place, limits: Limits, length: number): { readonly load: number; readonly placed: number } {
  const told = load ?? 0;
  switch (use) {
    case 'seat': return { load: limits.seatTest.value * Math.max(1, Math.floor(length / limits.seatBreadth.value)), placed: limits.seatTest.value };
    case 'table': return alike(Math.max(limits.tableTest.value, limits.tableImpact.value * told));
    case 'bed': return alike(limits.bedTest.value);
    case 'lid': return alike(limits.leanLoad.value);
    default: return alike(load ?? limits.nominalLoad.value);
  }
}

const alike = (load: number): { readonly load: number; readonly placed: number } => ({ load, placed: load });

/** The two outermost bars along one of the panel's own directions, with the strip across them. */
function pairOf(under: readonly BarLine[], panel: Part, pattern: CutPattern, kind: PanelKind, own: Vec3): readonly Pair[] {
  const along = unit(wayOf(panel, own));
  const across = unit(wayOf(panel, own[0] === 1 ? [0, 1, 0] : [1, 0, 0]));
  const set = under.filter((bar) => isParallel(bar.along, along)).toSorted((a, b) => dot(a.from, across) - dot(b.from, across));
  const [first, last] = [set[0], set.at(-1)];
  if (first === undefined || last === undefined || first === last) return [];
  return [{
    bars: [first, last],
    reach: Math.max(reachUnder(first, panel), reachUnder(last, panel)),
    strip: {
      span: Math.abs(alongLine(first.from, across, last.from)), width: widthOf(pattern, own), skin: kind.skin, faceDistance: kind.thickness - kind.skin,
      skinModulus: kind.skinModulus * kind.usedStockFactor, coreShearModulus: kind.coreShearModulus * kind.usedStockFactor,
    },
  }];
}

/** From the joint before a panel's middle to the one after it, mm; as long as the bar where there is none. */
export function reachUnder(bar: BarLine, panel: Part): number {
  const at = alongLine(bar.from, bar.along, placed(panel.pose, [0, 0, 0]));
  const before = bar.holds.filter((hold) => hold.at <= at).at(-1)?.at ?? 0;
  const after = bar.holds.find((hold) => hold.at > at)?.at ?? lengthOfBar(bar);
  return after - before;
}

/** Of the strip that ends on bars along an own direction: what the narrower flap there holds, or all of the middle part. */
function widthOf({ flaps, base, form }: CutPattern, own: Vec3): number {
  const axis = own[0] === 1 ? 0 : 1;
  const places = base.map((at) => at[axis]);
  const all = Math.max(...places) - Math.min(...places);
  const sides = axis === 0 ? ['front', 'back'] : ['left', 'right'];
  const held = form === 'tray' ? [] : flaps.filter(({ side }) => sides.includes(side)).map(({ strips }) => strips.reduce((least, { start, end }) => Math.min(least, end - start), all));
  return Math.min(all, ...held);
}

/** The joints at which the bars under a panel are held, each once. */
export const cornersUnder = (skeleton: Skeleton, { pairs, lone }: Bearing): readonly string[] => {
  const all = [...pairs.flatMap(({ bars }) => bars), ...lone];
  const ends = all.flatMap(({ holds }) => holds.filter(({ by }) => by === 'socket').map(({ joint }) => joint));
  const twice = ends.filter((joint, index) => ends.indexOf(joint) !== index);
  return [...new Set(twice.length > 0 ? twice : ends)].filter((joint) => skeleton.joints.has(joint));
};

/** Where a bar is under a panel's middle, mm. */
export const underMiddle = (bar: BarLine, panel: Part): Vec3 => onBar(bar, alongLine(bar.from, bar.along, placed(panel.pose, [0, 0, 0])));

/** Middle of a panel in use, mm. */
export const middleOf = ({ panel }: Bearing): Vec3 => placed(panel.pose, [0, 0, 0]);
