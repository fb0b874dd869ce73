import { arcArrow, brakesLocked, dashes, floor, itemFront, straight, stroke, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** The lying item is stood on its feet. */
const pictogram: Ink = together(
  floor(2, 46, 45),
  itemFront(29, 43, 5, 44, [12, 25, 38]),
  stroke(`${dashes(3, 29, 23, 29, 3, 5.5)}${dashes(3, 40, 23, 40, 3, 5.5)}${straight(3, 33.5, 3, 35.5)}${straight(23, 33.5, 23, 35.5)}`, 2.5),
  arcArrow(24, 26, 20, 190, 265),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  each: brakesLocked,
};
