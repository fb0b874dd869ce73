/** How many numbered pieces of work the picture of measuring and cutting shows; the others go on counting. */
const CUT = 3;

/** Numbers by which other pictures name what is done: the first and the last move of the loop at the end; the cord hung up and marked; the first move after that, the last, and the look at how tight it is. */
export const FRAMES = { first: CUT + 1, looped: CUT + 5, hung: CUT + 6, marked: CUT + 7, second: CUT + 8, around: CUT + 11, hitches: CUT + 13, last: CUT + 15, test: CUT + 16 } as const;
