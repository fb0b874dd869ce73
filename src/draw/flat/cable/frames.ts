/** How many numbered pieces of work the picture of measuring and cutting shows; the others go on counting. */
const CUT = 4;

/**
 * Numbers by which other pictures name what is done: the first and the last move of the loop at the end; the cord hooked up and marked;
 * the first move after that, the end round the lower peg and up through its loop; both cords drawn tight together; the first and the last move of
 * the first hitch, both hitches tight; a bottle hung on each cord, and how far each gives way.
 */
export const FRAMES = {
  first: CUT + 1, looped: CUT + 5, hooked: CUT + 6, marked: CUT + 7, second: CUT + 8, around: CUT + 12, through: CUT + 13, drawn: CUT + 14,
  hitch: CUT + 15, hitched: CUT + 17, last: CUT + 19, hung: CUT + 20, sag: CUT + 21,
} as const;
