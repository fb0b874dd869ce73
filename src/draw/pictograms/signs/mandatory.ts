import { body, box, dot, solid, stroke, straight, thin, white, type Ink } from '../ink.ts';
import { mandatory, safetyColours } from './shapes.ts';

const blue = safetyColours.blue;

const face = (): Ink => body('M24 7Q36 7 36 21Q36 39 24 41Q12 39 12 21Q12 7 24 7z', white, thin, white);

/** M002: a reader and a booklet. */
export const referToManual: Ink = mandatory(
  dot(24, 11, 5.5, white),
  solid('M10 32Q11 19 20 18.5H28Q37 19 38 32z', white),
  body('M24 26Q17 22 10 24.5V39Q17 37 24 40.5Q31 37 38 39V24.5Q31 22 24 26z', white, 2, blue),
  stroke(`${straight(24, 27, 24, 39.5)}${straight(14, 29.5, 20, 31)}${straight(28, 31, 34, 29.5)}`, thin, blue),
);

/** M004: a face with goggles. */
export const eyeProtection: Ink = mandatory(
  face(),
  stroke('M10.5 18.5H37.5', 3, blue),
  solid('M13.5 15.5H23V19Q23 25 18 25T13.5 19z', blue),
  solid('M34.5 15.5H25V19Q25 25 30 25T34.5 19z', blue),
  stroke('M20 33.5Q24 35.5 28 33.5', thin, blue),
);

/** M009: a glove with its cuff. */
export const protectiveGloves: Ink = mandatory(
  stroke('M16.6 24V12.5M21.8 23V9.5M27 23V9.5M32.2 24V12.5', 3.5, white),
  stroke('M32 28L38 20.8', 4.2, white),
  solid('M15 21H34V29L31 34H17L15 29z', white),
  body('M15.5 37H32.5L33.6 41.6H14.4z', white, thin, white),
);

/** M016: a face with a mask over mouth and nose. */
export const mask: Ink = mandatory(
  face(),
  dot(18.8, 18.5, 2, blue),
  dot(29.2, 18.5, 2, blue),
  stroke('M11 22L17 26M37 22L31 26', thin, blue),
  solid('M24 22L32 26Q33.5 34 28.5 37.5H19.5Q14.5 34 16 26z', blue),
  stroke(`${straight(20, 29, 28, 29)}${straight(20.5, 33, 27.5, 33)}`, thin, white),
);

/** M055: a grown-up holds a thing where a child cannot reach it. */
export const keepFromChildren: Ink = mandatory(
  dot(32.6, 14, 4, white),
  solid('M27.5 20H36.5L35 32H29z', white),
  stroke('M29.6 31V41M34.7 31V41', 2.7, white),
  stroke('M28 21L20.8 11', 3, white),
  solid('M14.5 6.5H23V11.5H14.5z', white),
  dot(14.5, 24.8, 3.4, white),
  solid('M11 30H18L17 37H12z', white),
  stroke('M12.4 36V40M16.6 36V40', thin, white),
  stroke('M17.5 31L22.2 25.4', thin, white),
);

/** M071: furniture held to the wall by a strap. */
export const antiTip: Ink = mandatory(
  solid('M10 10H14V36.5H38V40H10z', white),
  solid(box(18, 17.5, 19, 17), white),
  stroke(`${straight(18, 23.1, 37, 23.1)}${straight(18, 28.9, 37, 28.9)}`, thin, blue),
  stroke('M12 12.5H24V17.5', 3, white),
  ...[20.2, 26, 31.8].map((y) => dot(27.5, y, 1.1, blue)),
);
