import { fullPage, type PageSheet } from './page-sheet.ts';

/** A page that is laid out for more than one paper. */
export interface CommonSheet extends PageSheet {
  readonly width: number;
  readonly height: number;
}

/** The largest field that A4 (210 × 297 mm) and Letter (215.9 × 279.4 mm) both hold: pages laid out for it stand in the middle of either, and page 14 is page 14 on both. */
export const common: CommonSheet = { ...fullPage, outer: 10, inner: 8, width: 210, height: 279 };
