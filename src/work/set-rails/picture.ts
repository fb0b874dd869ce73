import { arrow, body, bold, box, dashes, solid, straight, stroke, thin, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

const railWithJoints = (y: number): Ink => together(
  stroke(straight(9, y, 39, y), bold),
  solid(`${box(4, y - 5, 10, 8)}${box(34, y - 5, 10, 8)}`),
);

/** Bare rails over a deck, joint over joint, where the posts will go through. */
const pictogram: Ink = together(
  body(box(2.5, 38, 43, 7.5), tint),
  railWithJoints(31),
  railWithJoints(19),
  stroke(`${dashes(9, 2, 9, 13, 3, 4)}${dashes(39, 2, 39, 13, 3, 4)}`, thin),
  arrow(24, 2.5, 24, 14.5),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
};
