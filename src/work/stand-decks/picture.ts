import { arcArrow, body, box, floor, placed, tint, together, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

const deckOnEdge = (x: number): Ink => body(box(x - 3.5, 18, 7, 25), tint);

/** Decks stand on edge, side by side. */
const pictogram: Ink = together(
  floor(2, 46, 44.5),
  ...[6.5, 18].map(deckOnEdge),
  placed(31, 43, 34, body(box(-7, -22, 7, 22), tint)),
  arcArrow(22, 43, 35, 312, 272),
);

export const picture: WorkPicture = {
  pictogram,
  paper: 'whole',
};
