import {
  arrow, black, body, bold, creaseTried, dot, markedAt, placed, ring, straight, stroke, tint, together, type Ink, type WorkPicture,
} from '../../draw/work-kit/index.ts';

/** A wheel rolled along a line presses it into the sheet. */
const pictogram: Ink = together(
  body('M2.5 33H45.5V45H2.5z', tint),
  stroke(straight(7, 39, 18, 39), 3),
  stroke(straight(23, 28, 33, 17), bold),
  placed(31, 19, -47, body('M0 -3.8H17Q19 0 17 3.8H0z', black)),
  ring(23, 29, 9, bold),
  dot(23, 29, 2.4),
  arrow(3, 15, 18, 15),
);

/** A trial on waste, then where it is creased. */
export const picture: WorkPicture = {
  pictogram,
  flat: (givens, step) => [...creaseTried(givens, step), ...markedAt('crease')(givens, step)],
};
