import { arrow, body, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** The frame is laid on the panel. */
const pictogram: Ink = together(
  body('M12 30H46L36 45.5H2z', tint),
  body('M15 5H43L34 18H6z', undefined, 4),
  arrow(24.5, 11, 24.5, 38),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
};
