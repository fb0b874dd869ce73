import type { Step } from '../../plan/index.ts';
import { blankTraced, guidePicture, blankOnStock, body, box, knife, tint, together, white, withPattern, type FlatGivens, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** One sheet parted from another. */
const pictogram: Ink = together(
  body(box(2.5, 14, 24, 31), tint),
  body('M32 14H45.5V45H32z', white),
  knife(29.3, 32, -66, 31, 4.4),
);

/** How the knife is led is shown once, where an item's first blank is cut. */
const isFirst = ({ plan }: FlatGivens, { action, number }: Step): boolean => plan.steps.find((each) => each.action === action)?.number === number;

export const picture: WorkPicture = {
  pictogram,
  flat: withPattern('round', (givens, step) => [...blankOnStock(givens, step), ...(isFirst(givens, step) ? [guidePicture({ pads: null }, givens.papers.bench)] : [])], blankTraced('none')),
};
