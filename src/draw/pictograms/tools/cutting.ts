import { black, body, placed, solid, stroke, straight, thin, tint, together, white, type Ink } from '../ink.ts';

const teeth = (from: number, pitch: number, count: number, y: number, depth: number): string =>
  Array.from({ length: count }, (_, i) => `L${from - (i + 0.5) * pitch} ${y + depth}L${from - (i + 1) * pitch} ${y}`).join('');

export const sawPicture: Ink = placed(0, 3, 0,
  body(`M2 17L30 9V28${teeth(30, 5.6, 5, 28, 5)}z`, white, thin),
  body('M29 9L37 8Q45 8 45.5 14L46 26Q46 32 40 32H30z', black, thin),
  solid('M35 15H39.5V25H35z', white),
);

export const knifePicture: Ink = placed(6, 42, -45,
  body('M0 -6L9 5H23V-6z'),
  stroke(`${straight(9, -6, 15, 5)}`, thin),
  body('M19 -7H46V7H19z', black),
  stroke(straight(27, 0, 38, 0), 3, white),
);

/** A hollow punch over a sheet with the holes it has made. */
export const punchPicture: Ink = together(
  body('M8 32H46L40 45H2z', tint),
  ...[12, 36].map((x) => solid(`M${x - 4.5} 38.5a4.5 3 0 0 1 9 0a4.5 3 0 0 1 -9 0z`)),
  body('M19.5 25L21 37H27L28.5 25z'),
  body('M17 8H31V22L29 27H19L17 22z', black),
  body('M15 3.5H33V9H15z'),
  stroke(`${straight(20.5, 14, 20.5, 21)}${straight(27.5, 14, 27.5, 21)}`, thin, white),
);
