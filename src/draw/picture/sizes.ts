/** Sizes of everything on paper, in mm of paper unless the name says otherwise, and the two colours. */

/** Line widths. ISO 128-20 (R): thick to thin 2 : 1; the groups are 0.5/0.25 and 0.35/0.18. */
export interface Pen {
  readonly outline: number;
  readonly edge: number;
}
export const plainPen: Pen = { outline: 0.5, edge: 0.25 };
export const finePen: Pen = { outline: 0.35, edge: 0.18 };
/** Where most parts are thinner than this on paper, four thick lines, the fine pen is used (own default, found by looking). */
export const fineBelow = 2;

export const ink = '#000';
export const white = '#fff';
/** New parts. About 24 % grey, which a 300 dpi mono printer keeps apart from white and from lines (own default). */
export const tint = '#b8c4cf';
/** Lines of pale bodies. */
export const paleInk = '#8a8a8a';

/**
 * Text height. Capitals of the bold face are 0.714 of it, so 3.2 mm here, 12.8 pt of type;
 * ISO/IEC Guide 37 (R) asks for 10 pt at least.
 */
export const textSize = 4.5;
export const capHeight = 0.714 * textSize;

/** Free rim inside the paper's edge. */
export const rim = 1;
/** Least gap between two labels. */
export const labelGap = 0.8;
export const leaderDot = 0.55;
/** White on both sides of a leader or thin arrow, so that it reads across other lines. */
export const haloWidth = 0.25;

export const orderRing = { stroke: 0.35, padding: 0.9 } as const;

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
  stroke: 0.25,
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
export const detail = { share: 0.26, least: 10, most: 20, smallLeast: 2, stroke: 0.35, ring: 0.5 } as const;
