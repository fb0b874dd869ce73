import { black, body, box, solid, stroke, type Ink } from '../ink.ts';
import { safetyColours, warning } from './shapes.ts';

/** W022: a finger on an edge. */
export const sharpElement: Ink = warning(
  stroke('M15 31H30', 5.6),
  solid('M28 28.2H33Q35.5 32 39 37.5H34.5Q30.5 36.5 28 33.8z'),
  body('M21.8 17L25.6 14V27L21.8 33z', black, 4, safetyColours.yellow),
  solid('M21.2 16.5L26 12.5V27L21.2 34.5z'),
  solid('M21 35.5Q23.6 40.4 21 40.5Q18.4 40.4 21 35.5z'),
);

/** W024: a hand between two bodies that close. */
export const crushedHands: Ink = warning(
  solid('M22.8 10.8H25.2V15H27.8L24 19L20.2 15H22.8z'),
  solid(box(18, 20.6, 12, 2.4)),
  stroke('M19.4 32V28M24 32V26.8M28.6 32V28', 2.9),
  stroke('M18.5 34.6L14.4 31.4', 2.6),
  solid('M18 31.5H30V33.8Q30 36.3 27.5 36.3H20.5Q18 36.3 18 33.8z'),
  solid(box(13, 38, 22, 2.2)),
);
