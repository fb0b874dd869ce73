import type { Report } from '../../check/index.ts';
import type { OfPicture } from '../../draw/index.ts';
import type { Model, PartKind } from '../../model/index.ts';
import type { Action, Caution, Plan, Standing, Tool } from '../../plan/index.ts';
import type { LaidFor, Paper } from '../papers/index.ts';
import type { Words } from '../words/index.ts';

/** `pictures` has numerals and units only and is the same for all languages; `words` adds names, short captions and sentences. */
export type Edition = 'pictures' | 'words';

export type { Paper };

/** Size of a picture on paper, mm. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

export type SizedPicture = PictureSize & OfPicture;

/** A pictogram: the inside of an `<svg>` on a grid of 48 units' height. */
export interface Glyph {
  readonly svg: string;
  /** Units: 48, or 72 for a pair of pictures. */
  readonly width: number;
  /** The id under which it is printed once for all its places; drawn in each of them where there is none. */
  readonly printedAs?: string;
}

/** Pictograms that belong to no one action, tool, caution or check; drawn with the others. */
export type PlainGlyph =
  | 'one-person' | 'one-child' | 'two-people' | 'time' | 'gauge' | 'right' | 'wrong' | 'look' | 'again'
  | LoadGlyph | 'wall-fix' | 'unproved'
  | 'for-adults' | 'for-anyone' | 'for-pupils' | 'untested-joint';

/** Pictograms with an empty face for a numeral: what a deck, a seat, a bed may carry, and how thick a mattress may be. */
export type LoadGlyph = 'load' | 'seat-load' | 'bed-load' | 'mattress';

/** Where a numeral may stand on a pictogram, in units of the grid. */
export interface NumeralPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where the pages get their pictograms from. */
export interface Glyphs {
  readonly action: (action: Action) => Glyph;
  readonly tool: (tool: Tool) => Glyph;
  readonly caution: (caution: Caution) => Glyph;
  /** The right and the wrong way, with tick and cross, of a check of that name (a key under `checks`). */
  readonly pair: (name: string) => { readonly right: Glyph; readonly wrong: Glyph };
  readonly plain: (name: PlainGlyph) => Glyph;
  readonly loadNumerals: Readonly<Record<LoadGlyph, NumeralPlace>>;
}

/** The place of a picture as an HTML string: an element of exactly this size (mm) with its words. Its `id` is that of `pictureId`. */
export type PlacePicture = (place: PictureSize & { readonly id: string; readonly alt: string }) => string;

export interface BookletInput {
  readonly model: Model;
  readonly plan: Plan;
  readonly report: Report;
  /** The models of all size variants in the order of the item file, `model`'s own among them. */
  readonly variants: readonly Model[];
  /** All pictures of the item, of its kinds of parts and of its steps, with their sizes. */
  readonly pictures: readonly SizedPicture[];
  /** mm of paper for one mm of part in the pictures of the kinds of parts; kinds of one scale stand together over its bar. */
  readonly partScale: Readonly<Record<PartKind, number>>;
  readonly edition: Edition;
  /** What its pages are laid out for. */
  readonly paper: LaidFor;
  readonly revision: number;
  /** Short hash of what the booklet was made from. */
  readonly contentMark: string;
  /** The mark of the print that it replaces; none is known unless given. */
  readonly replaces?: string | null;
  /** True where it is printed although a check failed: then every page says so and no load is told. False unless given. */
  readonly despiteFindings?: boolean;
  readonly words: Words;
  /** Further languages, whose texts stand beside those of `words`; none unless given. */
  readonly alongside?: readonly Words[];
  /** Names, in themselves, of all languages the booklet comes in; this one's alone unless given. */
  readonly languages?: readonly string[];
  readonly glyphs: Glyphs;
  readonly placePicture: PlacePicture;
}

export interface BookletPages {
  /** What goes into `<body>`: one `<section class="page">` a page. */
  readonly html: string;
  /** Style without fonts. The pages have no page margin of their own: `@page { margin: 0 }`. */
  readonly css: string;
  readonly title: string;
  readonly dir: 'ltr' | 'rtl';
  readonly pageCount: number;
}

export type { Action, Caution, PartKind, Standing, Tool };
