import { letter } from './letter.ts';
import { narrowPage } from './page-sheet.ts';
import type { HalfPaperFacts } from './types.ts';

/** Half of US letter, 5.5 × 8.5 in. */
export const halfLetter: HalfPaperFacts = { sort: 'half', width: 139.7, height: 215.9, css: '139.7mm 215.9mm', format: 'small', isUsual: true, suffix: '-half-letter', page: { ...narrowPage(125.7), outer: 7, inner: 7 }, sheet: letter };
