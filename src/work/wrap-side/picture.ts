import { arcArrow, bold, hardwareOf, sectionSeries, stroke, together, tubeSection, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** In section: the flap is bent up round the tube. */
const pictogram: Ink = together(
  stroke('M45 42H22A14 14 0 0 1 10.6 20', bold),
  tubeSection(22, 28, 8),
  arcArrow(22, 28, 21, 205, 325),
);

/** The first time it is done, sections show each crease. */
export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
  once: ({ model, papers }, { motions }) => motions.flatMap((motion) => (motion.kind === 'fold' ? [sectionSeries(model.pattern, motion.side, hardwareOf(model), papers.wrap, 'folded')] : [])),
};
