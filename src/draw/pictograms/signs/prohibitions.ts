import { box, dot, placed, ring, solid, stroke, straight, thin, type Ink } from '../ink.ts';
import { prohibition } from './shapes.ts';

/** P009: someone climbs the shelves. */
export const noClimbing: Ink = prohibition(
  stroke(`${straight(33, 11.5, 33, 36.5)}${straight(27, 15, 33, 15)}${straight(27, 24.5, 33, 24.5)}${straight(27, 34, 33, 34)}`, thin),
  dot(17.5, 14, 3.6),
  stroke('M18 20L17 29', 5),
  stroke('M18.5 20L27 15', 3),
  stroke('M17 30L22.5 30.5L26.5 35.5M16.5 30L13.5 38', 3),
);

/** P018 (from memory): someone sits on a top. */
export const noSitting: Ink = prohibition(
  dot(29, 12.5, 3.6),
  stroke('M29.5 19L29.5 27', 5.4),
  stroke('M28.5 27.4L18.5 27.4L18.5 36.5', 3.6),
  solid(box(22.5, 30.6, 14, 6.4)),
);

/** P015 (from memory): a bit comes out of a tube over a hand; the bar goes through the hand alone. */
export const handBehindBit: Ink = prohibition(
  ring(29, 14.6, 5.8, thin),
  stroke(straight(29, 7.6, 29, 20), 3.2),
  solid('M26.4 20H31.6L29 25.8z'),
  stroke('M19.1 34V30.4M22.9 33V28M26.7 33V28.4M30.5 34V31.4', 2.3),
  stroke('M17.6 36.6L13.6 32', 2.8),
  solid('M17.8 33H31.7V36.4Q29.8 41 25.2 41Q20.6 40.8 17.8 36.8z'),
);

/** A drill, and a cable and a pipe that a wall may hide; no sign of ISO 7010 that we know says it. */
export const noDrillingIntoLines: Ink = prohibition(
  placed(25.5, 22.5, 45, solid('M-1.8 0H1.8V-8H-1.8zM-1.8 -0.1H1.8L0 3z'), solid(box(-3.4, -11.5, 6.8, 4.5)), solid(box(-4.6, -17.4, 9.2, 6))),
  solid('M16.4 19.6L9.8 28.4H13.6L11.6 33.4L13.4 34L19.6 25.6H15.2L18.4 19.6z'),
  solid('M23.4 29.6Q28.2 35.6 27 38.2Q25.8 41 23.4 41Q21 41 19.8 38.2Q18.6 35.6 23.4 29.6z'),
);
