import { arrow, body, box, floor, sleevesTried, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A post goes through the corner joints of all decks. */
const pictogram: Ink = together(
  floor(2, 46, 45),
  body(box(2.5, 17, 31, 9)),
  ...[19, 40].map((x) => body(box(x - 4, 10, 8, 34), tint)),
  arrow(3, 35, 13.5, 35, { shaft: 3, head: 8 }),
);

/** The first time a tube goes through a sleeve, it is tried. */
export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  once: sleevesTried,
};
