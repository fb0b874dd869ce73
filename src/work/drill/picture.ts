import { black, body, box, sleevesMeasured, straight, stroke, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** The bit goes through sleeve and post. */
const pictogram: Ink = together(
  body(box(34, 2.5, 8, 43)),
  body(box(31, 10, 14, 22), tint),
  stroke(straight(22, 21, 43, 21), 3),
  body('M15 17L21 19V23L15 25z', black),
  body('M2.5 13.5H15V28.5H2.5z'),
  body('M2.5 28.5H10L12 41H2.5z', black),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  each: sleevesMeasured,
};
