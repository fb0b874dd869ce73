import { arcArrow, bold, stroke, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** In section: two walls turned up from the floor. */
const pictogram: Ink = together(
  stroke('M14 14V40H34V14', bold),
  arcArrow(18, 38, 14, 180, 245),
  arcArrow(30, 38, 14, 0, -65),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
};
