/** What the finished item may carry and how it is held. */
import { arrow } from './arrows.ts';
import { black, body, bold, box, solid, stroke, straight, thin, tint, together, white, type Ink } from './ink.ts';

/**
 * A weight on a shelf. Its white face is left empty for a numeral that the caller puts over it, as are those of
 * the next three pictures: see `loadNumerals`.
 */
const load: Ink = together(
  stroke(`${straight(3, 38, 45, 38)}`, bold),
  stroke(`${straight(6, 38, 6, 46)}${straight(42, 38, 42, 46)}`, 3),
  stroke('M18 12V9Q18 3 24 3T30 9V12', 3),
  body('M12 12H36L41 35H7z', undefined, 3),
);

/** A weight on a seat with four legs. */
const seatLoad: Ink = together(
  stroke(`${straight(9, 32, 9, 45.5)}${straight(39, 32, 39, 45.5)}${straight(9, 40, 39, 40)}`, 3),
  stroke(straight(4, 32, 44, 32), 5),
  stroke('M18 8V6.5Q18 2 24 2T30 6.5V8', 3),
  body('M12 8H36L39.5 28.5H8.5z', undefined, thin),
);

/** A weight on the mattress of a bed with guards. */
const bedLoad: Ink = together(
  stroke(`${straight(3, 12, 3, 45.5)}${straight(45, 12, 45, 45.5)}`, bold),
  stroke(`${straight(3, 17, 45, 17)}${straight(3, 25, 45, 25)}`, 3),
  stroke(straight(3, 41, 45, 41), bold),
  body(box(4.5, 32.5, 39, 6), tint, thin),
  stroke('M18 10V8.5Q18 4 24 4T30 8.5V10', 3),
  body('M12.5 10H35.5L38 31H10z', undefined, thin),
);

const small = { shaft: thin, head: 5 };

/** A soft mattress on its base under the guard, between the two lines that measure it; over it the room for its figure. */
const mattress: Ink = together(
  solid(box(17, 5, 26, 20), white),
  stroke(`${straight(14, 4, 14, 45.5)}${straight(46, 4, 46, 45.5)}`, bold),
  stroke(straight(14, 43, 46, 43), bold),
  body('M19 28H41Q43 28 43 30V41H17V30Q17 28 19 28z', tint, thin),
  stroke('M22 31V38M30 31V38M38 31V38', thin),
  stroke(`${straight(1.5, 28, 11, 28)}${straight(1.5, 41, 11, 41)}`, thin),
  arrow(6, 34.5, 6, 28.5, small),
  arrow(6, 34.5, 6, 40.5, small),
);

/** Where the numerals may stand, in units. */
export const loadNumerals = {
  load: { x: 13, y: 15, width: 22, height: 18 },
  'seat-load': { x: 13, y: 10, width: 22, height: 17 },
  'bed-load': { x: 13, y: 12, width: 22, height: 17 },
  mattress: { x: 18, y: 6, width: 24, height: 17 },
} as const;

/** A bracket, screwed to the wall, that holds the item by its post close under its top. */
const wallFix: Ink = together(
  body(box(2.5, 2.5, 11, 43), tint),
  stroke(`${straight(29, 3, 29, 46)}${straight(43, 3, 43, 46)}${straight(29, 5, 43, 5)}${straight(29, 24, 43, 24)}${straight(29, 41, 43, 41)}`, 3),
  body(box(14, 6.5, 3, 14), black, thin),
  stroke(straight(17, 13.5, 25, 13.5), 3),
  body(box(24.5, 9.5, 9, 8), black, thin),
  stroke(`${straight(6, 9.5, 14, 9.5)}${straight(6, 17.5, 14, 17.5)}`, thin),
);

export const standingPictures = {
  'seat-load': seatLoad,
  'bed-load': bedLoad,
  mattress,
  load,
  'wall-fix': wallFix,
} as const satisfies Readonly<Record<string, Ink>>;
