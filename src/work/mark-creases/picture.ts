import { markedAt, panelPlan, pencil, straight, stroke, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** Lines side by side along one edge. */
const pictogram: Ink = together(
  panelPlan(2.5, 10, 43, 35),
  stroke(`${straight(8.5, 14, 8.5, 41)}${straight(15, 14, 15, 41)}${straight(21.5, 14, 21.5, 41)}${straight(28, 22, 28, 41)}`, 2.5),
  pencil(28, 22, -49, 22.5, 4.2),
);

export const picture: WorkPicture = {
  pictogram,
  flat: markedAt('creases'),
};
