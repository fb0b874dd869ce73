import { black, body, box, halfCutMended, halfCutTried, markedAt, solid, thin, tint, together, white, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** In section: the blade goes through the upper skin and the core and leaves the lower skin whole. */
const pictogram: Ink = together(
  body(box(2.5, 24, 43, 21), tint, thin),
  solid(box(1.5, 22, 45, 5.5)),
  solid('M17.5 20.5H30.5V31L24 43L17.5 31z', white),
  solid(box(1.5, 41, 45, 5.5)),
  body('M18.5 3H29.5V29L24 40.5L18.5 29z'),
  body('M16.5 2.5H31.5V13H16.5z', black),
);

/** A trial on waste, then where it is cut and how deep; at last what is done where it went through. */
export const picture: WorkPicture = {
  pictogram,
  flat: (givens, step) => [...halfCutTried(givens, step), ...markedAt('half-cut')(givens, step), ...halfCutMended(givens, step)],
};
