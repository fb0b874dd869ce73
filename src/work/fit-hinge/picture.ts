import { arrow, body, box, clipsTold, onBarsMeasured, stroke, tint, tubeSection, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** In section: a clip with its leaf goes onto a tube. */
const pictogram: Ink = together(
  tubeSection(14, 36, 8),
  stroke('M4 27V22A10 10 0 0 1 24 22V27', 4),
  body(box(24, 14, 21.5, 5), tint),
  arrow(36, 24, 36, 42),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  each: (givens, step) => [...onBarsMeasured(givens, step), ...clipsTold(givens, step)],
};
