import type { Model, Vec2 } from '../../model/index.ts';
import type { OrderLine, PanelPiece, TubePiece, Use } from './types.ts';

/** Letters without those that are read as numerals. */
const LETTERS = 'ABCDEFGHJKLMNPRSTUVWXYZ';
/** Sizes closer than this are cut alike, mm. */
const ALIKE = 0.01;

/** A, B … Z, AA, AB … */
export function letterOf(place: number): string {
  const last = LETTERS[place % LETTERS.length] ?? '';
  return place < LETTERS.length ? last : `${letterOf(Math.floor(place / LETTERS.length) - 1)}${last}`;
}

interface Wanted {
  readonly sides: readonly number[];
  readonly use: Use;
}

/** All tubes of an order by length, the longest first. */
export function tubePieces(lines: readonly OrderLine[]): readonly TubePiece[] {
  const wanted = lines.flatMap(({ model, count }) => model.tubes.map(({ kind, length, count: each }): Wanted =>
    ({ sides: [length], use: { item: model.item, size: model.size, kind, count: each * count } })));
  return grouped(wanted).map(({ sides: [length = 0], uses }, place) => ({ letter: letterOf(place), length, count: total(uses), uses }));
}

/** All pieces of panel of an order by size, the largest first; their letters follow those of the tubes. */
export function panelPieces(lines: readonly OrderLine[], lettersBefore: number): readonly PanelPiece[] {
  const wanted = lines.flatMap(({ model, count }) => panelsWanted(model).map(({ kind, sides, each }): Wanted =>
    ({ sides, use: { item: model.item, size: model.size, kind, count: each * count } })));
  return grouped(wanted.map(({ sides, use }): Wanted => ({ sides: [...sides].sort((a, b) => b - a), use })))
    .map(({ sides: [width = 0, height = 0], uses }, place) => ({ letter: letterOf(lettersBefore + place), width, height, count: total(uses), uses }));
}

/** A rectangle to cut for panels of one pattern, before anything is notched out of it, and how many. mm. */
export interface PanelWanted {
  readonly kind: 'panel' | 'flat-panel';
  readonly sides: Vec2;
  readonly each: number;
}

/** What an item's panels are cut from, a pattern at a time: those that are folded, then the flat ones. */
export function panelsWanted({ patterns }: Pick<Model, 'patterns'>): readonly PanelWanted[] {
  const wanted = patterns.map(({ form, min, max, partIds }): PanelWanted =>
    ({ kind: form === 'flat' ? 'flat-panel' : 'panel', sides: [max[0] - min[0], max[1] - min[1]], each: partIds.length }));
  return [...wanted.filter(({ kind }) => kind === 'panel'), ...wanted.filter(({ kind }) => kind === 'flat-panel')];
}

const total = (uses: readonly Use[]): number => uses.reduce((sum, { count }) => sum + count, 0);

function grouped(wanted: readonly Wanted[]): readonly { readonly sides: readonly number[]; readonly uses: readonly Use[] }[] {
  const size = ({ sides }: { readonly sides: readonly number[] }): number => sides.reduce((product, side) => product * side, 1);
  const groups = wanted.reduce<readonly { readonly sides: readonly number[]; readonly uses: readonly Use[] }[]>((all, { sides, use }) => {
    const same = all.find((group) => group.sides.every((side, index) => Math.abs(side - (sides[index] ?? 0)) < ALIKE));
    return same === undefined ? [...all, { sides, uses: [use] }] : all.map((group) => (group === same ? { ...group, uses: withUse(group.uses, use) } : group));
  }, []);
  return [...groups].sort((a, b) => size(b) - size(a));
}

/** Uses of the same kind in the same item counted together. */
function withUse(uses: readonly Use[], use: Use): readonly Use[] {
  const same = uses.find(({ item, size, kind }) => item === use.item && size === use.size && kind === use.kind);
  return same === undefined ? [...uses, use] : uses.map((each) => (each === same ? { ...each, count: each.count + use.count } : each));
}
