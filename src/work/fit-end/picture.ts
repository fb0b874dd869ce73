import { arrow, black, body, box, brakesSet, endsTried, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A plug goes up into the end of a tube. */
const pictogram: Ink = together(
  body(box(16, 2.5, 16, 20)),
  body(box(19.5, 28, 9, 8), tint),
  body(box(14, 36, 20, 5), black),
  arrow(40, 44, 40, 22),
);

/** Whether an end holds is tried where the first of its form is fitted; where one has a brake, how that is set. */
export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  each: (givens, step) => [...endsTried(givens, step), ...brakesSet(givens, step)],
};
