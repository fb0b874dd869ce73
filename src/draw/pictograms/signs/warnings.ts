import { black, body, box, solid, stroke, type Ink } from '../ink.ts';
import { safetyColours, warning } from './shapes.ts';

/** W022: a finger on an edge. */
export const sharpElement: Ink = warning(
  stroke('M15 31H30', 5.6),
  solid('M28 28.2H33Q35.5 32 39 37.5H34.5Q30.5 36.5 28 33.8z'),
  body('M21.8 17L25.6 14V27L21.8 32z', black, 5.2, safetyColours.yellow),
  solid('M21.2 16.5L26 12.5V26.5L21.2 33.4z'),
  solid('M21 35.4Q23.8 40 21 40.1Q18.2 40 21 35.4z'),
);

/** W024: a hand between two bodies that close. */
export const crushedHands: Ink = warning(
  solid('M22.8 10.4H25.2V14.4H27.8L24 18.5L20.2 14.4H22.8z'),
  solid(box(18, 20.6, 12, 2.4)),
  stroke('M19.3 32V28M24 32V26.8M28.7 32V28', 2.6),
  stroke('M18.5 34.6L14.4 31.4', 2.6),
  solid('M18 31.5H30V33.8Q30 36.3 27.5 36.3H20.5Q18 36.3 18 33.8z'),
  solid(box(13, 38.2, 22, 2)),
);
