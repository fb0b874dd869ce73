import { arrow, black, body, box, stroke, straight, thin, tint, together, wallSheets, type FlatGivens, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';
import type { Step } from '../../plan/index.ts';
import { PULL_TEST, tieLength, WALLS } from './walls.ts';

/** A screw goes through a bracket's plate into a wall. */
const pictogram: Ink = together(
  body(box(2.5, 2.5, 13, 43), tint),
  stroke(`${straight(2.5, 17, 15.5, 17)}${straight(2.5, 31, 15.5, 31)}${straight(9, 3, 9, 17)}${straight(9, 31, 9, 45)}`, thin),
  body(box(16, 10, 5, 28), black, thin),
  stroke('M21 31H33A6 6 0 0 0 33 19', 4),
  stroke(straight(6, 24, 28, 24), 3),
  body('M25 20H29V28H25z', black, thin),
  arrow(46, 10, 26, 10, { shaft: 3, head: 8 }),
);

/** The wall is made ready before the item comes to it. */
const atWall = ({ model, papers }: FlatGivens, { detail }: Step) => {
  const wall = detail.on === 'wall' ? detail.wall : 'masonry';
  return wallSheets(model, { kind: wall, fixing: WALLS[wall] }, { ...PULL_TEST, tie: tieLength(model) }, papers.bench);
};

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
  before: (givens, step) => atWall(givens, step).before,
  once: (givens, step) => atWall(givens, step).after,
};
