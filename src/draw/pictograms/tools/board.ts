import { black, body, box, solid, straight, stroke, thin, tint, together, white, type Ink } from '../ink.ts';

/** A sheet on a board of wood, which shows its grain; a punch goes through the sheet into the wood. */
export const boardPicture: Ink = together(
  body(box(2, 28, 44, 17)),
  stroke(`M7 34Q16 31.5 25 34T42 34M7 40Q14 38 20 40M27 40Q34 38 41 40`, thin),
  body(box(7, 19, 34, 7), tint),
  body('M20.5 14H27.5V31H20.5z', white, thin),
  body('M17.5 6H30.5V15H17.5z', black),
  solid(box(15, 2, 18, 4)),
);

/** A bowl of water, as a file is dipped into. */
export const waterPicture: Ink = together(
  body('M24 3Q30 11 27.6 14.6A4.4 4.4 0 0 1 20.4 14.6Q18 11 24 3z', white),
  body('M3 22H45Q43 42 30 44H18Q5 42 3 22z'),
  solid('M7.5 30Q13 27.5 18 30T29 30T40.5 30Q38 39 29.5 41H18.5Q10 39 7.5 30z', tint),
  stroke(straight(3, 22, 45, 22), 3),
);
