import { black, body, box, straight, stroke, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A pin through sleeve and post, a wing nut on its end. */
const pictogram: Ink = together(
  body(box(18, 2.5, 12, 43)),
  body(box(15, 10, 18, 28), tint),
  stroke(straight(8, 24, 40, 24), 3.4),
  body('M3 17H7.5V31H3z', black),
  body('M36 20L41 21L46 14.5V33.5L41 27L36 28z', black),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
};
