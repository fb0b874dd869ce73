/** Tubes, pins and nuts in their seats. */
import { black, body, box, placed, solid, stroke, straight, thin, tint, together, white, type Ink } from '../ink.ts';
import type { Pair } from './pair.ts';

const socket: Ink = together(body('M4 8H40V14H13V34H40V40H4z', black, thin));

const tubeInSocket = (x: number): Ink => together(socket, body(box(x, 17.6, 68 - x, 12.8)));

/** The tube's end touches the bottom of the socket. */
export const tubeHome: Pair = { right: tubeInSocket(15), wrong: tubeInSocket(36) };

const clamped = (nut: number): Ink => together(
  body(box(20, 3, 24, 42), tint),
  stroke(`${straight(32, 3, 32, 45)}`, thin),
  stroke(straight(14, 24, 66, 24), 4),
  solid(box(12, 15, 7, 18)),
  body(`M${nut} 18H${nut + 5}L${nut + 9} 8H${nut + 12}V40H${nut + 9}L${nut + 5} 30H${nut}z`, black, thin),
);

/** A drill's bit through both walls of a tube; `slant` is how far its tip is off. */
const drilled = (slant: number): Ink => together(
  solid(`${box(3, 22, 66, 5)}${box(3, 41, 66, 5)}`),
  solid(`M31 20H41L${41 + slant} 46.5H${31 + slant}z`, white),
  stroke(`M36 16L${36 + slant} 45.5`, 4.5),
  placed(36, 16, -(Math.atan2(slant, 29.5) * 180) / Math.PI, solid('M-7 -13.5H7V-5L3.5 0H-3.5L-7 -5z')),
);

/** The hole goes straight through both walls. */
export const holeStraight: Pair = { right: drilled(0), wrong: drilled(17) };

/** The wing nut is drawn up to the sleeve. */
export const nutTight: Pair = { right: clamped(46.5), wrong: clamped(56) };

const pinned = (head: number): Ink => together(
  body(box(3, 18, 66, 12), tint),
  body(box(3, 31, 66, 14), tint),
  stroke(straight(36, head, 36, 40), 4.5),
  solid(`M22 ${head}Q23 ${head - 8} 36 ${head - 8}T50 ${head}z`),
);

/** The pin's head lies on the panel. */
export const pinHome: Pair = { right: pinned(17), wrong: pinned(9.5) };

/** A punch through a tab into its panel; `lifted` is by how much the tab's edge stands off, degrees. */
const punched = (lifted: number): Ink => together(
  body(box(3, 32, 66, 13), tint),
  placed(5, 31, -lifted, body(box(0, -12.5, 58, 12), tint)),
  body('M30 2.5H42V8H40V36L36 40L32 36V8H30z', black, thin, white),
);

/** Tab and panel lie close together under the punch. */
export const tabPressed: Pair = { right: punched(0), wrong: punched(13) };
