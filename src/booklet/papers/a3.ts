import type { ApartPaperFacts } from './types.ts';

/** ISO 216 A3: A4 enlarged by √2. */
export const a3: ApartPaperFacts = { sort: 'apart', width: 297, height: 420, css: 'A3', format: 'page', isUsual: false, suffix: '-a3', posterScale: Math.SQRT2 };
