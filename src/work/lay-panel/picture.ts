import { arrow, body, box, onBarsMeasured, tint, tubeSection, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** In section: the panel comes down on two tubes. */
const pictogram: Ink = together(
  tubeSection(12, 37, 7.5),
  tubeSection(36, 37, 7.5),
  body(box(2.5, 21, 43, 7), tint),
  arrow(12, 3, 12, 18),
  arrow(36, 3, 36, 18),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  each: onBarsMeasured,
};
