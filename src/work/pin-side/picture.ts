import { arrow, panelStrip, pinSide, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** Those at the ends sit already, the one between them follows. */
const pictogram: Ink = together(
  panelStrip,
  pinSide(24, 26, 5.5, 11),
  pinSide(9, 30, 5.5, 0),
  pinSide(39, 30, 5.5, 0),
  arrow(24, 2.5, 24, 19),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
};
