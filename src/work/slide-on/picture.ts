import { arrow, body, box, floor, sleevesTried, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A frame goes down over two posts. */
const pictogram: Ink = together(
  floor(2, 46, 45),
  ...[10, 38].map((x) => body(box(x - 3, 14, 6, 31))),
  ...[10, 38].map((x) => body(box(x - 5.5, 17, 11, 10), tint)),
  body(box(15, 19, 18, 6), tint),
  arrow(24, 3, 24, 16),
);

/** The first time a tube goes through a sleeve, it is tried. */
export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  once: sleevesTried,
};
