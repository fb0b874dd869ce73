import { arrow, body, box, onBarsMeasured, tint, together, tubeSection, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

const bothTubes = together(tubeSection(11.2, 13, 7.5), tubeSection(11.2, 35, 7.5));

/** In section: the panel is held against two tubes, from the inner side. */
const pictogram: Ink = together(
  bothTubes,
  body(box(23, 2.5, 7, 43), tint),
  arrow(46, 13, 33, 13),
  arrow(46, 35, 33, 35),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  each: onBarsMeasured,
};
