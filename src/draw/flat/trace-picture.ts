import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { hatching } from '../kit/hatching.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, line, outline, ringedNumeral, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { Box, DrawnPicture } from '../types.ts';

/** How the first piece is a pattern for the others: drawn round, or its marks carried over the edges of a stack; holes that end in the core cannot be punched through it. */
export type TraceWay = 'round' | 'edges';

/** Height of the strip, mm of paper. */
const HIGH = 46;
/** Thickness of a panel seen from its edge, and how far it is long, mm of paper. */
const SHEET = 5;
const LONG = 78;

/** The first piece, measured, and how it is laid on the others, so many of them. */
export function tracePicture(way: TraceWay, others: number, { width }: Paper): DrawnPicture {
  return toPicture({ width, height: HIGH }, traceMarks(way, others, width));
}

/** The marks of the picture, for the tests. */
export function traceMarks(way: TraceWay, others: number, width: number): readonly Mark[] {
  const [left, right]: readonly [Vec2, Vec2] = [[12, HIGH / 2], [width / 2 + 4, HIGH / 2]];
  return [
    ...measured(left), line(pens.motion, [width / 2 - 14, HIGH / 2], [width / 2 - 6, HIGH / 2]), arrowhead([width / 2 - 2, HIGH / 2], [1, 0], 5),
    ...(way === 'round' ? drawnRound(right, others) : carried(right, others)),
    ...othersNumbered(others, [right[0] + LONG - 9, HIGH - 9]),
  ];
}

/** The numbers of the others under each other, the last at a place: all are counted with the first, as the step counts them. */
function othersNumbered(others: number, [x, y]: Vec2): readonly Mark[] {
  const last = ringed(others + 1, [x, y]);
  return others === 1 ? [last] : [ringed(2, [x, y - 16]), line(pens.motion, [x, y - 10], [x, y - 6]), last];
}

const ringed = (place: number, at: Vec2): Mark => ringedNumeral(tell.number(place), at, capHeights.order, pens.edge);

const ringOf = ({ x, y, width, height }: Box): readonly Vec2[] => [[x, y], [x + width, y], [x + width, y + height], [x, y + height]];

const sheet = (box: Box, fill: 'panel' | 'white'): readonly Mark[] => [area(fill, ringOf(box)), outline(pens.cut, ringOf(box))];

const first = (at: Vec2): Mark => ringed(1, at);

/** The first piece between the arrows of a measure. */
const measured = ([x, y]: Vec2): readonly Mark[] => [
  ...sheet({ x, y: y - 11, width: 46, height: 26 }, 'panel'), first([x + 23, y + 2]),
  line(pens.dimension, [x, y - 16], [x + 46, y - 16]), arrowhead([x, y - 16], [-1, 0]), arrowhead([x + 46, y - 16], [1, 0]),
  line(pens.dimension, [x - 5, y - 11], [x - 5, y + 15]), arrowhead([x - 5, y - 11], [0, -1]), arrowhead([x - 5, y + 15], [0, 1]),
];

/** A pencil whose point is on a place, leaning to the right. */
function pencilAt([x, y]: Vec2): readonly Mark[] {
  const ring: readonly Vec2[] = [[x, y], [x + 1.2, y - 4.2], [x + 7.5, y - 14.5], [x + 10, y - 13], [x + 3.8, y - 2.7]];
  return [area('white', ring), outline(pens.cut, ring), area('ink', [[x, y], [x + 0.5, y - 1.8], [x + 1.6, y - 1.1]])];
}

/** How far a sheet of a stack looks out behind the one before it, mm of paper. */
const BEHIND = 1.6;

/** The first lies on the stock panel, a corner in its corner, those that follow in a stack behind; the pencil goes round its two free edges. */
function drawnRound([x, y]: Vec2, others: number): readonly Mark[] {
  const stock: Box = { x: x + 4, y: y - 12, width: 60, height: 32 };
  const [right, low] = [stock.x + 46, stock.y + 26];
  const stack = Array.from({ length: Math.min(others, 3) - 1 }, (_, index) => (Math.min(others, 3) - 1 - index) * BEHIND);
  return [
    ...stack.flatMap((by) => sheet({ ...stock, x: stock.x - by, y: stock.y - by }, 'white')), ...sheet(stock, 'white'), ...hatching(ringOf(stock), 2.2).map(([from, to]) => line(pens.edge, from, to)),
    ...sheet({ x: stock.x, y: stock.y, width: 46, height: 26 }, 'panel'), first([stock.x + 20, stock.y + 14]),
    line({ ...pens.motion, width: 0.9 }, [stock.x, low], [right, low], [right, stock.y + 12]), ...pencilAt([right, stock.y + 12]),
  ];
}

/** A stack seen from its edge, the first on top, held by a clamp; its marks go straight down over all edges. */
function carried([x, y]: Vec2, others: number): readonly Mark[] {
  const shown = Math.min(others, 3);
  const top = y - 4;
  const sheets = Array.from({ length: shown + 1 }, (_, index) => sheet({ x, y: top + index * SHEET, width: LONG - 14, height: SHEET }, index === 0 ? 'panel' : 'white')).flat();
  const low = top + (shown + 1) * SHEET;
  const marked = [10, 16, 48].map((by) => line({ ...pens.motion, width: 0.7 }, [x + by, top], [x + by, low]));
  return [
    ...sheets, ...marked, ...pencilAt([x + 48, low]),
    line(pens.motion, [x + 45, top], [x + 45, low - 3]), arrowhead([x + 45, low], [0, 1], 3),
    first([x + 30, top - 6]), line(pens.edge, [x + 30, top - 2.6], [x + 30, top + 1]),
  ];
}
