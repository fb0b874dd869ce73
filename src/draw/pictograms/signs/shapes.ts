/**
 * Geometric shapes and safety colours of ISO 3864-1 (R2). The three colours are our own, chosen inside the
 * chromaticity regions of ISO 3864-4; the screen renderings of RAL 1003, 3001 and 5005 that are commonly quoted
 * for it fall just outside. The yellow is light, which gives its symbol more contrast on a mono printer.
 */
import { black, dot, ring, stroke, together, white, type Ink } from '../ink.ts';

export const safetyColours = { yellow: '#ffcc00', red: '#b3111b', blue: '#004f9e' } as const;

/** Symbol and ground of each kind of sign, the pair that must stand out: luminance contrast at least 70 %. */
export const signGrounds = {
  warning: { symbol: black, ground: safetyColours.yellow },
  mandatory: { symbol: white, ground: safetyColours.blue },
  prohibition: { symbol: black, ground: white },
} as const;

const corners = 'M24 3.6L46.8 43.1H1.2z';

/** Yellow triangle with a black band; the symbol is black. */
export const warning = (...symbol: readonly Ink[]): Ink => together(
  `<path d="${corners}" fill="${signGrounds.warning.ground}" stroke="${black}" stroke-width="2.2" stroke-linejoin="round" stroke-linecap="round"/>`,
  ...symbol,
);

/** Blue disc; the symbol is white. */
export const mandatory = (...symbol: readonly Ink[]): Ink => together(dot(24, 24, 23.5, signGrounds.mandatory.ground), ...symbol);

/** Red ring with a bar from upper left to lower right over the black symbol. */
export const prohibition = (...symbol: readonly Ink[]): Ink => together(
  ring(24, 24, 21.15, 4.7, signGrounds.prohibition.ground, safetyColours.red),
  ...symbol,
  stroke('M9.1 9.1L38.9 38.9', 3.8, safetyColours.red),
);
