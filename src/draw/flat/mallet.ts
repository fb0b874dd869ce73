import { area, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { boxAt, type AtEnd } from './fitted-end.ts';

/** A mallet's head along its blow and across that, and its handle's width and length, mm of paper. */
const MALLET = { head: [7, 11], handle: [2.4, 9] } as const;

/** A mallet whose face is at a place, its handle to one side. */
export function mallet(at: AtEnd, side: 1 | -1): readonly Mark[] {
  const [deep, high] = MALLET.head;
  const head = boxAt(at, [0, deep], [-high / 2, high / 2]);
  const handle = boxAt(at, [(deep - MALLET.handle[0]) / 2, (deep + MALLET.handle[0]) / 2], [(side * high) / 2, side * (high / 2 + MALLET.handle[1])]);
  return [area('white', handle), outline(pens.cut, handle), area('panel', head), outline(pens.cut, head)];
}
