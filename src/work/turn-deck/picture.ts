import { arcArrow, body, bold, box, straight, stroke, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A deck turned face down. */
const pictogram: Ink = together(
  body(box(3, 34, 42, 10), tint),
  stroke(`${straight(3, 34, 45, 34)}`, bold),
  stroke(`${straight(11, 39, 11, 44)}${straight(37, 39, 37, 44)}`, 3),
  arcArrow(24, 28, 16, 180, 360, { shaft: 4, head: 11 }),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
};
