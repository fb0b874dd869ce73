import type { Vec2 } from '../../model/index.ts';
import type { Mark } from '../kit/marks.ts';
import { area, line, outline, ringedNumeral } from '../kit/marks.ts';
import { earlier, pens } from '../kit/pens.ts';
import { capHeights } from '../kit/lettering.ts';
import type { Fit } from '../kit/fit.ts';
import { allOnPaper, onPaper } from '../kit/fit.ts';
import { tell } from '../../scene/index.ts';
import { hatching } from '../kit/hatching.ts';
import { keptMarks } from './kept-sign.ts';

/** The first cut's line runs out past the stock's edge to its order numeral. */
const pastEdge = 4;
/** Room beyond the stock's right and upper edges for the order numerals, mm of paper. */
export const orderRoom = pastEdge + 2 * capHeights.order + 1;
const hatchPitch = 3;

/** The sides of a piece along the stock's, turned by a quarter when only that fits. Throws a RangeError when neither does. */
export function onStock(piece: 'blank' | 'flat panel', sides: Vec2, stock: Vec2): Vec2 {
  const fits = (each: Vec2) => each[0] <= stock[0] + 1e-9 && each[1] <= stock[1] + 1e-9;
  const turned: Vec2 = [sides[1], sides[0]];
  if (fits(sides)) return sides;
  if (fits(turned)) return turned;
  throw new RangeError(`The ${piece} of ${sides[0].toFixed(1)} × ${sides[1].toFixed(1)} mm does not fit on the stock panel of ${stock[0]} × ${stock[1]} mm; make the item smaller or take a larger panel.`);
}

/** What becomes of something left over: the number of the step that cuts from it, the same step's next piece, or waste. */
export type Use = number | 'next' | 'waste';

/** What is left over on the right of a piece, and above it. */
export interface Kept {
  readonly right: Use;
  readonly above: Use;
}

export const WASTE: Kept = { right: 'waste', above: 'waste' };

/** The stock panel with a piece in its lower left corner; of what is left over, waste is hatched, what a later step uses is white with that step's number. */
export function stockMarks(view: Fit, [x, y]: Vec2, stock: Vec2, { right, above }: Kept = WASTE): readonly Mark[] {
  const rests = [
    { ring: allOnPaper(view, [[x, 0], [stock[0], 0], stock, [x, stock[1]]]), use: right },
    { ring: allOnPaper(view, [[0, y], [x, y], [x, stock[1]], [0, stock[1]]]), use: above },
  ];
  return [
    area('panel', allOnPaper(view, [[0, 0], [x, 0], [x, y], [0, y]])),
    ...rests.flatMap(({ ring, use }) => (use === 'waste' ? hatching(ring, hatchPitch).map(([from, to]) => line(earlier(pens.edge), from, to)) : keptMarks(ring, use))),
    outline(earlier(pens.cut), allOnPaper(view, [[0, 0], [stock[0], 0], stock, [0, stock[1]]])),
    outline(pens.cut, allOnPaper(view, [[0, 0], [x, 0], [x, y], [0, y]])),
  ];
}

/** The second cut has its numeral on it, this share of its length from its beginning: beyond its end the first has taken all off. */
const SECOND = 0.4;

/** First right across the stock, then along what is left: each cut runs from edge to edge. */
export function stockCuts(view: Fit, [x, y]: Vec2, stock: Vec2): readonly Mark[] {
  const order = (number: number, centre: Vec2): Mark => ringedNumeral(tell.number(number), centre, capHeights.order, pens.edge);
  const top = onPaper(view, [x, stock[1]]);
  const corner = onPaper(view, [x, y]);
  const left = onPaper(view, [0, y]);
  const radius = capHeights.order * 0.95;
  return [
    line(pens.cut, onPaper(view, [x, 0]), [top[0], top[1] - pastEdge]),
    order(1, [top[0], top[1] - pastEdge - radius]),
    line(pens.cut, left, corner),
    order(2, [left[0] + (corner[0] - left[0]) * SECOND, corner[1]]),
  ];
}
