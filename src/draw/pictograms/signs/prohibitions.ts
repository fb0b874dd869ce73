import { box, dot, solid, stroke, straight, thin, type Ink } from '../ink.ts';
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
