import { arrow, black, body, box, socketsFitted, thin, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A tube goes into the arm of a corner joint. */
const pictogram: Ink = together(
  body('M2.5 4H26V12H14V26H26V34H2.5z', black, thin),
  body(box(20, 13, 25.5, 12)),
  arrow(45, 41, 20, 41),
);

/** The first time it is done, a section shows how deep a tube is home, and that it is tried whether it holds. */
export const picture: WorkPicture = {
  pictogram,
  paper: 'frame',
  once: socketsFitted,
};
