import { black, body, box, cutBarsInPieces, placed, thin, together, white, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

const sawTeeth = Array.from({ length: 6 }, (_, i) => `L${28 - (i + 0.5) * 4.6} 4.5L${28 - (i + 1) * 4.6} 0`).join('');

/** A tube in two pieces, the saw in the gap. */
const pictogram: Ink = together(
  body(box(2.5, 29, 19, 13)),
  body(box(27.5, 29, 18, 13)),
  placed(19.5, 40, -62,
    body(`M0 -9L28 -11V0${sawTeeth}z`, white, thin),
    body('M28 -11H38V0H28z', black, thin),
  ),
);

export const picture: WorkPicture = {
  pictogram,
  flat: ({ cuts, papers }) => cutBarsInPieces(cuts, papers),
};
