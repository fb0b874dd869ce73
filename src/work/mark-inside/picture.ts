import { blankTraced, markedAt, panelPlan, pencil, stroke, together, withPattern, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** The inside rectangle, first line on the panel. */
const pictogram: Ink = together(
  panelPlan(2.5, 10, 43, 35),
  stroke('M28 19H11V36H37V30', 3),
  pencil(28, 19.5, -42, 21, 4.2),
);

export const picture: WorkPicture = {
  pictogram,
  flat: withPattern('edges', markedAt('inside'), blankTraced('roots')),
};
