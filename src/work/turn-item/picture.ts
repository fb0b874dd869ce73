import { arcArrow, bold, straight, stroke, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

const lyingItem = (y: number): Ink => together(
  stroke(`${straight(4, y, 44, y)}${straight(4, y + 14, 44, y + 14)}`, 3),
  stroke(`${straight(9, y, 9, y + 14)}${straight(24, y, 24, y + 14)}${straight(39, y, 39, y + 14)}`, bold),
);

/** The lying item is turned onto its other face. */
const pictogram: Ink = together(lyingItem(29.5), arcArrow(24, 24, 17, 180, 360, { shaft: 4, head: 11 }));

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
};
