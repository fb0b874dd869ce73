import type { Paper } from './types.ts';

/** Points of PDF in a millimetre: 72 to the inch, 25.4 mm to the inch. */
export const POINTS_PER_MM = 72 / 25.4;

/** CSS pixels in a millimetre: 96 to the inch. */
export const PIXELS_PER_MM = 96 / 25.4;

/** Sheet sizes in mm, upright: A4 by ISO 216; Letter is 8.5 × 11 in (ANSI A). */
export const PAPER_SIZES: Readonly<Record<Paper, { readonly width: number; readonly height: number; readonly css: string }>> = {
  a4: { width: 210, height: 297, css: 'A4' },
  letter: { width: 215.9, height: 279.4, css: 'letter' },
};
