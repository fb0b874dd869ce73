import type { OnPaper, PrintDocument, PrintPicture } from '../print/index.ts';

/** One file to publish: its name, and what it takes to make it. */
export type Copy = PrintedCopy | WrittenCopy;

export interface PrintedCopy {
  readonly made: 'printed';
  readonly file: string;
  /** Laid into it; copies with the same set share its prints. */
  readonly pictures: readonly PrintPicture[];
  /** Printed pictograms that are laid into it too, one set for all copies of all sizes; none unless given. */
  readonly glyphs?: readonly PrintPicture[];
  readonly document: () => PrintDocument;
  /** Those that have the same pages on other papers, itself among them; none unless given. */
  readonly sharing?: Sharing | null;
  /** Made of the printed copy when it is finished. */
  readonly bound: readonly BoundCopy[];
}

/** Copies that differ by their paper alone, so that they are printed once. */
export interface Sharing {
  readonly copies: readonly OnPaper[];
}

export interface BoundCopy {
  readonly file: string;
  readonly from: (printed: Uint8Array) => Promise<Uint8Array>;
}

export interface WrittenCopy {
  readonly made: 'written';
  readonly file: string;
  readonly text: () => string | Promise<string>;
  /** Whether it is told: not so what is written down beside the copies. */
  readonly isTold: boolean;
}
