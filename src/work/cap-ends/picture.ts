import { arrow, black, body, box, endSheet, placed, straight, stroke, thin, tint, together, tubeSide, white, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** A file goes over the end of a tube, a drop of water over it; a cap waits. */
const pictogram: Ink = together(
  tubeSide(2.5, 25, 34, 9),
  placed(24, 23, -45,
    body(box(-14, -3.5, 24, 7), white, thin),
    body(box(10, -2.5, 9, 5), black, thin),
    stroke(`${straight(-9, -3.5, -6, 3.5)}${straight(-3, -3.5, 0, 3.5)}${straight(3, -3.5, 6, 3.5)}`, thin),
  ),
  body('M10 4Q16 11 13.5 15A4.6 4.6 0 0 1 6.5 15Q4 11 10 4z', white, thin),
  body('M40 26H45.5V42H40V38H34V30H40z', tint, thin),
  arrow(45, 46, 31, 46, { shaft: 2, head: 3.4 }),
);

export const picture: WorkPicture = { pictogram, flat: ({ model, papers }) => [endSheet(model, papers.bench)] };
