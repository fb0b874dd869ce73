import type { PageFormat } from '../../draw/index.ts';
import type { PageSheet } from './page-sheet.ts';

/** What is known of every paper; lengths in mm, upright. */
interface CommonFacts {
  readonly width: number;
  readonly height: number;
  /** Its name, or its width and height, as CSS has them. */
  readonly css: string;
  /** The format that pictures are drawn in for its pages. */
  readonly format: PageFormat;
  /** Printed on where no paper is named. */
  readonly isUsual: boolean;
  /** Between a file's name and its ending; the paper that most people print on has none. */
  readonly suffix: string;
}

/** A paper that every printer takes: all kinds of publications come on it. */
export interface FullPaperFacts extends CommonFacts {
  readonly sort: 'full';
  readonly page: PageSheet;
  /** How much larger than on A4 all is set on a poster. */
  readonly posterScale: number;
}

/** A paper of which two pages go on a sheet of a full one: booklets come on it. */
export interface HalfPaperFacts extends CommonFacts {
  readonly sort: 'half';
  readonly page: PageSheet;
  /** The sheet, mm, upright. */
  readonly sheet: { readonly width: number; readonly height: number };
}

/** A paper apart, of no booklet: only those editions come on it that name it. */
export interface ApartPaperFacts extends CommonFacts {
  readonly sort: 'apart';
  readonly posterScale: number;
}

export type PaperFacts = FullPaperFacts | HalfPaperFacts | ApartPaperFacts;
