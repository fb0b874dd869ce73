import { arrow, bold, stroke, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** From above: a tab turned round the corner, two pins through it. */
const pictogram: Ink = together(
  stroke('M6 42V12H42', bold),
  stroke('M12 40V18H40', bold),
  arrow(34, 32, 34, 14),
  arrow(26, 32, 14, 32),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
};
