import { blankTraced, blankOnStock, body, box, knife, tint, together, white, withPattern, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** One sheet parted from another. */
const pictogram: Ink = together(
  body(box(2.5, 14, 24, 31), tint),
  body('M32 14H45.5V45H32z', white),
  knife(29.3, 32, -66, 31, 4.4),
);

export const picture: WorkPicture = {
  pictogram,
  flat: withPattern('round', blankOnStock, blankTraced('none')),
};
