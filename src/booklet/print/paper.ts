import type { AnyPaper } from './types.ts';

/** Points of PDF in a millimetre: 72 to the inch, 25.4 mm to the inch. */
export const POINTS_PER_MM = 72 / 25.4;

/** CSS pixels in a millimetre: 96 to the inch. */
export const PIXELS_PER_MM = 96 / 25.4;

/** Sheet sizes in mm, upright: A3, A4 and A5 by ISO 216; Letter is 8.5 × 11 in (ANSI A), half of it 5.5 × 8.5 in. */
export const PAPER_SIZES: Readonly<Record<AnyPaper, { readonly width: number; readonly height: number; readonly css: string }>> = {
  a4: { width: 210, height: 297, css: 'A4' },
  letter: { width: 215.9, height: 279.4, css: 'letter' },
  a3: { width: 297, height: 420, css: 'A3' },
  a5: { width: 148, height: 210, css: 'A5' },
  'half-letter': { width: 139.7, height: 215.9, css: '139.7mm 215.9mm' },
};
