import { arcArrow, bold, stroke, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** In section: two walls turned up from the floor. */
const pictogram: Ink = together(
  stroke('M10 16V40H38V16', bold),
  arcArrow(12, 38, 16, 185, 262),
  arcArrow(36, 38, 16, -5, -82),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
};
