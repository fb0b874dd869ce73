import { arrow, body, framePicture, hardwareOf, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** The frame is laid on the panel. */
const pictogram: Ink = together(
  body('M12 30H46L36 45.5H2z', tint),
  body('M15 5H43L34 18H6z', undefined, 4),
  arrow(24.5, 11, 24.5, 38),
);

/** The first time it is done, a section shows where the tubes lie on the panel. */
export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
  once: ({ model, papers }) => model.patterns.filter(({ form, flaps }) => form === 'wrapped' && flaps.length > 0).slice(0, 1)
    .map((pattern) => framePicture(pattern, hardwareOf(model).tube, papers.bench.width)),
};
