import type { ReactNode } from 'react';
import type { Picture } from '../../draw/index.ts';
import type { Glyph, GlyphKind } from '../glyph-store.ts';
import type { Phrase, Saying } from '../phrases.ts';
import type { Telling } from '../types.ts';

/** What the pages are made with. */
export interface Maker {
  /** The first language's telling: for all that is the same in every language. */
  readonly base: Telling;
  readonly say: (saying: Saying) => Phrase;
  readonly keep: (glyph: Glyph, kind?: GlyphKind) => string;
  readonly pictures: readonly Picture[];
}

/** One page of the guide, and its place in the overview. */
export interface GuidePage {
  /** Letters, digits and dashes; stable when other steps come or go. */
  readonly id: string;
  /** Neighbours of one group stand together in the overview. */
  readonly group: string;
  readonly label: Phrase;
  /** What stands for the page in the overview: a numeral or a pictogram. */
  readonly sign: { readonly numeral: string } | { readonly glyph: Glyph };
  /** How often the worker ticks it off; none for a page without work. */
  readonly times?: number;
  /** The page of a step of the work. */
  readonly isStep?: true;
  readonly content: ReactNode;
}
