import { a4 } from './a4.ts';
import { narrowPage } from './page-sheet.ts';
import type { HalfPaperFacts } from './types.ts';

/** ISO 216 A5. */
export const a5: HalfPaperFacts = { sort: 'half', width: 148, height: 210, css: 'A5', format: 'small', isUsual: true, suffix: '-a5', page: { ...narrowPage(132), outer: 8, inner: 8 }, sheet: a4 };
