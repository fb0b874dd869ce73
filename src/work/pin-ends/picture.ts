import { arrow, panelStrip, pinSide, ring, thin, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** The two pins at the ends go in first. */
const pictogram: Ink = together(
  panelStrip,
  pinSide(9, 28, 5.5, 9),
  pinSide(39, 28, 5.5, 9),
  ring(24, 36.5, 2.6, thin),
  arrow(9, 3, 9, 20),
  arrow(39, 3, 39, 20),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
};
