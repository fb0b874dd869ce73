import { markedAt, panelPlan, pencil, stroke, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A corner marked off square. */
const pictogram: Ink = together(
  panelPlan(2.5, 10, 43, 35),
  stroke('M4 31H16V43.5M32 43.5V31H44', 3),
  pencil(17, 30, -45, 29, 4.2),
);

export const picture: WorkPicture = {
  pictogram,
  flat: markedAt('notches'),
};
