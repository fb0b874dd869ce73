import { arrow, body, box, stroke, tint, tubeSection, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** In section: a ring with its plate goes onto a tube. */
const pictogram: Ink = together(
  tubeSection(12, 24, 8),
  stroke('M22 14A13 13 0 0 1 22 34', 4),
  stroke('M26 24H36', 4),
  body(box(36, 6, 7, 28), tint),
  arrow(44, 41, 20, 41, { shaft: 3, head: 8 }),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
};
