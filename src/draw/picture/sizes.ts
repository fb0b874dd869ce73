/** Sizes of what lies over the drawing of a scene, in mm of paper unless the name says otherwise. Its lines are in the kit's pens. */

/** Where most parts are thinner than this on paper, four thick lines, the fine pen is used (own default, found by looking). */
export const fineBelow = 2;

/** Free rim inside the paper's edge. */
export const rim = 1;
/** Least gap between two labels. */
export const labelGap = 0.8;
export const leaderDot = 0.55;
/** White between a numeral and its ring. */
export const orderPadding = 0.9;

export const arrow = {
  /** Never shorter on paper; lengthened backwards. */
  least: 7,
  /** Below this length, or where two arrows come closer than `apart`, the thin form. */
  broadFrom: 12,
  apart: 6,
  /** More arrows than this are all thin. */
  mostBroad: 4,
  /** A shorter path on paper points at the reader or away. */
  endOn: 0.3,
  broad: { shaft: 3.5, headLength: 6, headWidth: 7.5, line: 0.5 },
  thin: { shaft: 1, headLength: 3.5, headWidth: 3 },
  endOnRadius: 2.6,
} as const;

/** Dimension lines, after ISO 129-1 (M): narrow filled heads, figure above the line. */
export const lengthLine = {
  headLength: 3,
  headWidth: 1,
  /** From the place to the start of the extension line, and past the dimension line. */
  gap: 0.8,
  past: 1.5,
  leastAway: 7,
  /** Sine of the least angle on paper between the measured span and the way off it. */
  leastSine: 0.35,
  /** A shorter line has its heads outside. */
  headsOutside: 9,
  outsideTail: 5,
  figureGap: 0.9,
} as const;

/** Enlarged details: radius of the big ring, as a share of the paper's shorter side, within limits. */
export const detail = { share: 0.26, least: 10, most: 20, smallLeast: 2 } as const;
