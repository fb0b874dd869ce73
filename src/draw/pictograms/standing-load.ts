/** What the finished item may carry and how it is held; a finished deck. */
import { body, bold, box, ring, stroke, straight, thin, tint, together, type Ink } from './ink.ts';

/**
 * A weight on a shelf. The white face of the weight is left empty for a numeral that the caller puts over it:
 * see `loadNumeral`.
 */
const load: Ink = together(
  stroke(`${straight(3, 38, 45, 38)}`, bold),
  stroke(`${straight(6, 38, 6, 46)}${straight(42, 38, 42, 46)}`, 3),
  stroke('M18 12V9Q18 3 24 3T30 9V12', 3),
  body('M12 12H36L41 35H7z', undefined, 3),
);

/** Where the numeral of `load` may stand, in units. */
export const loadNumeral = { x: 13, y: 15, width: 22, height: 18 } as const;

/** A bracket from the top of the rack to the wall, held by a screw. */
const wallFix: Ink = together(
  body(box(2.5, 2.5, 11, 43), tint),
  stroke(`${straight(27, 21, 27, 46)}${straight(43, 21, 43, 46)}${straight(27, 33, 43, 33)}${straight(27, 44, 43, 44)}`, 3),
  stroke(straight(26.5, 21, 43.5, 21), bold),
  stroke('M16.5 4.5V17.5H35', bold),
  stroke(straight(5.5, 10, 20, 10), 3),
  stroke(straight(22, 6.5, 22, 13.5), bold),
);

/** One finished deck: a slab with a ring at each corner, for work that is done once for each of them. */
const deck: Ink = together(
  body('M5 25L21 12L43 18L27 34z', undefined, 3),
  stroke('M5 25V29L27 38L43 22V18', 3),
  ...[[5, 24], [21, 11], [43, 17], [27, 33]].map(([x = 0, y = 0]) => ring(x, y, 3.2, thin)),
);

export const standingPictures = {
  deck,
  load,
  'wall-fix': wallFix,
} as const satisfies Readonly<Record<string, Ink>>;
