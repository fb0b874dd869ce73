import { a3 } from './a3.ts';
import { a4 } from './a4.ts';
import { a5 } from './a5.ts';
import { halfLetter } from './half-letter.ts';
import { letter } from './letter.ts';
import type { PaperFacts } from './types.ts';

/** All papers there are, by the names they are asked for by. Those of a sort are offered in this order. */
export const PAPERS = { a4, letter, a5, 'half-letter': halfLetter, a3 } as const satisfies Readonly<Record<string, PaperFacts>>;

export type AnyPaper = keyof typeof PAPERS;

/** The papers of a sort. */
type OfSort<Sort extends PaperFacts['sort']> = { [Name in AnyPaper]: (typeof PAPERS)[Name]['sort'] extends Sort ? Name : never }[AnyPaper];

export type FullPaper = OfSort<'full'>;
export type HalfPaper = OfSort<'half'>;
/** Those of which booklets have pages. */
export type Paper = OfSort<'full' | 'half'>;
/** What pages are laid out for: one paper, or the field that all full papers hold. */
export type LaidFor = Paper | 'common';
export type PosterPaper = OfSort<'full' | 'apart'>;

const NAMES = Object.keys(PAPERS) as readonly AnyPaper[];

/** The papers of some sorts, sort by sort in the order given. */
export const papersOf = <Sort extends PaperFacts['sort']>(...sorts: readonly Sort[]): readonly OfSort<Sort>[] =>
  sorts.flatMap((sort) => NAMES.filter((name): name is OfSort<Sort> => PAPERS[name].sort === sort));

export const isHalfPaper = (paper: string): paper is HalfPaper => papersOf('half').some((half) => half === paper);

export { common } from './common.ts';
export type { PageSheet } from './page-sheet.ts';
export type { PaperFacts } from './types.ts';
