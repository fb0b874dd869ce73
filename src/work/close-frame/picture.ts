import { arrow, black, body, box, socketsFitted, straight, stroke, thin, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

/** Corner joint seen from above: a ring for the post and two arms. */
const joint = (x: number, y: number): Ink => body(box(x - 5, y - 5, 10, 10), black, thin);

/** Three sides stand; the fourth closes the frame. */
const pictogram: Ink = together(
  stroke('M8 22V41H40V22', 5),
  joint(8, 41), joint(40, 41),
  stroke(straight(8, 7, 40, 7), 5),
  joint(8, 7), joint(40, 7),
  arrow(18, 12, 18, 32), arrow(30, 12, 30, 32),
);

/** The first time it is done, a section shows which goes into which. */
export const picture: WorkPicture = {
  pictogram,
  paper: 'frame',
  once: socketsFitted,
};
