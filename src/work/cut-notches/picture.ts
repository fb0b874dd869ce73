import { body, cornersCut, knife, thin, tint, together, white, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A square piece lifted out of the corner; the inside corner stays round. */
const pictogram: Ink = together(
  body('M20 45.5V31Q20 27 16 27H2.5V8H45.5V45.5z', tint),
  body('M2.5 33H13.5V45.5H2.5z', white, thin),
  knife(19, 28, -40, 32, 4.6),
);

export const picture: WorkPicture = {
  pictogram,
  flat: cornersCut,
};
