import { blankTraced, arrow, black, body, punchedPanel, solid, stroke, thin, tint, together, white, withPattern, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A punch over the row of holes along an edge. */
const pictogram: Ink = together(
  body('M7 33H46L41 45.5H2z', tint),
  ...[9.5, 38.5].map((x) => solid(`M${x - 4} 39.5a4 2.6 0 0 1 8 0a4 2.6 0 0 1 -8 0z`)),
  body('M19.5 5H28.5V25L27.5 40H20.5L19.5 25z', black, thin),
  body('M17 2.5H31V8H17z', black),
  stroke('M24 13V22', thin, white),
  arrow(36, 10, 36, 29),
);

export const picture: WorkPicture = {
  pictogram,
  flat: withPattern('edges', punchedPanel, blankTraced('holes')),
};
