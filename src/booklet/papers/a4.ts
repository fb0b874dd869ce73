import { fullPage } from './page-sheet.ts';
import type { FullPaperFacts } from './types.ts';

/** ISO 216 A4. */
export const a4: FullPaperFacts = { sort: 'full', width: 210, height: 297, css: 'A4', format: 'page', isUsual: true, suffix: '', page: { ...fullPage, outer: 10, inner: 8 }, posterScale: 1 };
