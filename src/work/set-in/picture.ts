import { arrow, body, bold, stroke, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** The frame is put over a box that stands open. */
const pictogram: Ink = together(
  body('M14 26H34V44H14z', tint),
  stroke('M14 44V20M34 44V20M14 44H34', bold),
  stroke('M4 6H44', bold),
  arrow(8, 10, 8, 30),
  arrow(40, 10, 40, 30),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
};
