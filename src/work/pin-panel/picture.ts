import { black, body, box, straight, stroke, tint, together, tubeSection, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** In section: the pin comes from the panel's side, the wing nut sits on the tube's. */
const pictogram: Ink = together(
  body(box(30, 2.5, 7, 43), tint),
  tubeSection(20.5, 24, 7.5),
  stroke(straight(4, 24, 40, 24), 3.4),
  body('M39.5 17H44V31H39.5z', black),
  body('M10.5 20L6 21L1.5 14.5V33.5L6 27L10.5 28z', black),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
};
