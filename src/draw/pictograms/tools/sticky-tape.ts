import { body, box, ring, thin, tint, together, type Ink } from '../ink.ts';

/** A roll of tape that sticks, its end pulled off. */
export const stickyTapePicture: Ink = together(
  body(`${box(19, 35, 24, 7)}M43 35L46 37.3L43 39.7L46 42`, tint, thin),
  ring(19, 23, 17, 3, tint),
  ring(19, 23, 7, 3),
);
