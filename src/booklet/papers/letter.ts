import { fullPage } from './page-sheet.ts';
import type { FullPaperFacts } from './types.ts';

/** US letter, 8.5 × 11 in (ANSI/ASME Y14.1 size A). */
export const letter: FullPaperFacts = { sort: 'full', width: 215.9, height: 279.4, css: 'letter', format: 'page', isUsual: true, suffix: '-letter', page: { ...fullPage, outer: 12, inner: 11.9 }, posterScale: 1 };
