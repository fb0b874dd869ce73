import type { Format } from '../../draw/index.ts';
import type { AnyPaper } from '../papers/index.ts';

/** How many copies come of the languages asked for. */
export type CopiesBy =
  /** One in each language, or in two or three side by side. */
  | 'language'
  /** Free of words: one for all, described in the language that the texts are written in first. */
  | 'none'
  /** Free of words, but laid out as one reads: one for each direction. */
  | 'direction'
  /** One that holds them all. */
  | 'all';

/** What a publication cannot be made without. */
export interface Needs {
  readonly languages: CopiesBy;
  /** Which of the sets of a size's pictures it is laid out with: that of its paper, or always the same; `own` where pictures are drawn for it alone. */
  readonly pictures: Format | 'of-paper' | 'own';
  /** The fonts that its browser loads; null where no browser prints it. */
  readonly fonts: 'all' | 'latin' | null;
}

/** One kind of thing that can be published. Its `document.ts` makes it; here is what is known before. */
export interface Publication {
  readonly name: string;
  /** None for what is read on a screen. */
  readonly papers: readonly AnyPaper[];
  readonly ending: '.pdf' | '-stitched.pdf' | '.html';
  readonly needs: Needs;
}

/** A publication of one size of an item, which is chosen by its name. */
export interface Edition extends Publication {
  readonly ending: '.pdf';
  readonly needs: Needs & { readonly languages: Exclude<CopiesBy, 'all'>; readonly pictures: Format | 'of-paper'; readonly fonts: 'all' };
  /** Its pages are laid out once for all full papers; each has pages of its own unless so. */
  readonly layout?: 'common';
  /** Made where no edition is named. */
  readonly isUsual: boolean;
  /** Booklets come paper by paper, one edition beside the other, and those on half papers can be stitched; all else comes by itself. */
  readonly series: 'booklet' | 'alone';
}
