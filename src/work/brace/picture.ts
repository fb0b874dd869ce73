import { cableSheets, itemFront, straight, stroke, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** Two cables crossed over one face. */
const pictogram: Ink = together(
  stroke(`${straight(10, 6, 38, 42)}${straight(38, 6, 10, 42)}`, 2.5),
  itemFront(8, 40, 2.5, 45.5, [7, 41]),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  each: cableSheets,
};
