/** What the worker is told about time and checking. */
import { body, bold, box, dot, ring, straight, stroke, thin, tint, together, type Ink } from './ink.ts';

/** A stop watch, the time that has run filled: how long, not what time of day. */
const time: Ink = together(
  stroke(straight(24, 3, 24, 9), bold), stroke(straight(18.5, 3, 29.5, 3), bold), stroke(straight(38.5, 9.5, 41.5, 12.5), bold),
  ring(24, 27.5, 17.5, 3), body('M24 27.5V16.5A11 11 0 0 1 33.5 33z', tint, thin),
  stroke(straight(24, 27.5, 33.5, 33), bold), dot(24, 27.5, 2.6),
);

const look: Ink = together(
  body('M2.5 24Q24 -1 45.5 24Q24 49 2.5 24z', undefined, 3),
  ring(24, 24, 7.2, 3, tint),
  dot(24, 24, 3.8),
);

/** A strip let down into the gap between two bodies. */
const gauge: Ink = together(
  body(box(2.5, 22, 14.5, 22), tint),
  body(box(31, 22, 14.5, 22), tint),
  body('M17 3H31V41H17z', undefined, 3),
  stroke(`${straight(18, 10, 23, 10)}${straight(18, 17, 26, 17)}${straight(18, 24, 23, 24)}${straight(18, 31, 26, 31)}`, thin),
);

/** A check has failed: an outlined triangle with a cross, none of the safety signs. */
const unproved: Ink = together(body('M24 3L46 44.5H2z', undefined, 3.5), stroke('M17.5 24.5L30.5 37.5M30.5 24.5L17.5 37.5', 5));

export const lookPictures = {
  time,
  right: stroke('M7 26L18.5 38L41 10', 7),
  wrong: stroke('M9 9L39 39M39 9L9 39', 7),
  look,
  gauge,
  unproved,
} as const satisfies Readonly<Record<string, Ink>>;
