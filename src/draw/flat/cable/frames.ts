/** How many numbered pieces of work the picture of measuring and cutting shows; the others go on counting. */
const CUT = 3;

/**
 * Numbers by which other pictures name what is done: the first and the last move of the loop at the end; the cord hung up and marked;
 * the first move after that, the end round the lower peg, the first and the last move of the first hitch, both hitches tight, and the first picture of the look at how tight the cord is.
 */
export const FRAMES = { first: CUT + 1, looped: CUT + 5, hung: CUT + 6, marked: CUT + 7, second: CUT + 8, around: CUT + 12, hitch: CUT + 14, hitched: CUT + 16, last: CUT + 18, test: CUT + 19 } as const;
