/** How many numbered pieces of work the picture of measuring and cutting shows; the series of knots goes on counting. */
const CUT = 3;

/** Numbers of the series' first frame, of that at which the second loop is placed, of that where it is drawn home and of the last, by which other pictures name them. */
export const FRAMES = { first: CUT + 1, placed: CUT + 5, tight: CUT + 7, test: CUT + 12 } as const;
