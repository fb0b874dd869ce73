import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { hatching } from '../kit/hatching.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { spread } from '../kit/spread.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { faceSign } from './marked-face.ts';

/** How the first piece is a pattern for the others: drawn round, its holes too where it has any that go through; or its marks carried over the edges of a stack, then drawn across each, lines or the middles of holes. */
export type TraceWay = 'round' | 'edges';

/** A piece and what is marked on it, mm from its lower left corner: its sides, where its marks lie along them, and the middles of its holes, none where lines are drawn. */
export interface Traced {
  readonly sides: Vec2;
  readonly places: readonly [readonly number[], readonly number[]];
  readonly holes: readonly Vec2[];
  /** What the second is cut from is as wide as it. */
  readonly isFromStrip?: true;
}

/** Height of the strip, mm of paper. */
const HIGH = 44;
/** Most sides of a sheet in plan and from its corner, mm of paper. */
const PLAN = { width: 32, height: 27 } as const;
/** The middles of the first, of the first on the stock and of what it makes, where a piece is drawn round; and the arrows between them: shares of the paper's width. */
const ROUND = { first: 0.15, onwards: 0.285, traced: 0.47, away: 0.68, made: 0.86 } as const;
/** The same where the stack stands between them. */
const SMALL = { width: 28, height: 27 } as const;
const STACK = { width: 36, height: 13, slant: 10, sheet: 3 } as const;
const cap = capHeights.step;

/** The first piece, and how it is laid on the others, so many of them. */
export const tracePicture = (way: TraceWay, piece: Traced, others: number, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, traceMarks(way, piece, others, width));

/** The marks of the picture, for the tests. */
export const traceMarks = (way: TraceWay, piece: Traced, others: number, width: number): readonly Mark[] =>
  (way === 'round' ? roundMarks(piece, others, width) : edgesMarks(piece, others, width));

/** The number of a piece, as it is written on it: an order is ringed. */
const numbered = (place: number, at: Vec2): Mark => figure(tell.number(place), at, capHeights.count, 700);

/** Beside a stack, the numbers of the others under each other: all are counted with the first, as the step counts them. */
const othersNumbered = (others: number, [x, y]: Vec2): readonly Mark[] =>
  (others === 1 ? [numbered(2, [x, y])] : [numbered(2, [x, y - 8]), line(pens.motion, [x, y - 3], [x, y + 3]), numbered(others + 1, [x, y + 8])]);

const sheet = (box: Box, fill: 'panel' | 'white'): readonly Mark[] => [area(fill, cornersOf(box)), outline(pens.cut, cornersOf(box))];

const onwardsFrom = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x, y], [x + 5, y]), arrowhead([x + 9, y], [1, 0], 5)];

/** A pencil whose point is on a place, leaning to the right. */
function pencilAt([x, y]: Vec2): readonly Mark[] {
  const ring: readonly Vec2[] = [[x, y], [x + 1.2, y - 4.2], [x + 7.5, y - 14.5], [x + 10, y - 13], [x + 3.8, y - 2.7]];
  return [area('white', ring), outline(pens.cut, ring), area('ink', [[x, y], [x + 0.5, y - 1.8], [x + 1.6, y - 1.1]])];
}

/** A piece in plan, as large as it fits round a place. */
function planBox({ sides }: Traced, [x, y]: Vec2, most: typeof PLAN | typeof SMALL): Box {
  const scale = Math.min(most.width / sides[0], most.height / sides[1]);
  const [width, height] = [sides[0] * scale, sides[1] * scale];
  return { x: x - width / 2, y: y - height / 2, width, height };
}

/** The paper place of a place of the piece in its box. */
const inBox = ({ sides }: Traced, box: Box, [x, y]: Vec2): Vec2 => [box.x + (x / sides[0]) * box.width, box.y + box.height - (y / sides[1]) * box.height];

const holesIn = (piece: Traced, box: Box): readonly Mark[] => piece.holes.map((at) => circle(inBox(piece, box, at), 1, pens.edge, 'white'));

/** How far a sheet of a stack looks out behind the one before it, mm of paper. */
const BEHIND = 1.6;

/** The first between the arrows of a measure; then on the stock panel, a corner in its corner, those that follow in a stack behind; the pencil goes round its two free edges, or along the one of a strip, and into its holes. */
function roundMarks(piece: Traced, others: number, width: number): readonly Mark[] {
  const y = HIGH / 2 + 2;
  const first = planBox(piece, [width * ROUND.first, y], PLAN);
  const second = planBox(piece, [width * ROUND.traced, y], PLAN);
  const made = planBox(piece, [width * ROUND.made, y], PLAN);
  const { x, y: top } = second;
  const [right, low] = [x + second.width, top + second.height];
  const isStrip = piece.isFromStrip === true;
  const stock: Box = { x, y: top - 6, width: second.width + (isStrip ? 0 : 14), height: second.height + 6 };
  const left: readonly Vec2[] = [[x, stock.y], [stock.x + stock.width, stock.y], [stock.x + stock.width, low], [right, low], [right, top], [x, top]];
  const behind = Math.min(others, 3) - 1;
  const [hole] = piece.holes.map((at) => inBox(piece, second, at)).toSorted(([one], [other]) => one - other);
  return [
    ...sheet(first, 'panel'), ...holesIn(piece, first), numbered(1, [first.x + first.width / 2, y]),
    line(pens.dimension, [first.x, first.y - 5], [first.x + first.width, first.y - 5]), arrowhead([first.x, first.y - 5], [-1, 0]), arrowhead([first.x + first.width, first.y - 5], [1, 0]),
    line(pens.dimension, [first.x - 5, first.y], [first.x - 5, first.y + first.height]), arrowhead([first.x - 5, first.y], [0, -1]), arrowhead([first.x - 5, first.y + first.height], [0, 1]),
    ...onwardsFrom([width * ROUND.onwards, y]),
    ...Array.from({ length: behind }, (_, index) => (behind - index) * BEHIND).flatMap((by) => sheet({ ...stock, x: stock.x - by, y: stock.y - by }, 'white')),
    ...sheet(stock, 'white'), ...hatching(left, 2.2).map(([from, to]) => line(pens.edge, from, to)),
    ...sheet(second, 'panel'), ...holesIn(piece, second), numbered(1, [x + second.width / 2, top + second.height / 2]),
    line({ ...pens.motion, width: 0.9 }, [x, top], [right, top], ...(isStrip ? [] : [[right, low] as const])), ...pencilAt(isStrip ? [x + second.width * 0.72, top] : [right, top + second.height * 0.7]), ...(hole === undefined ? [] : pencilAt(hole)),
    ...onwardsFrom([width * ROUND.away, y]), ...madeMarks(piece, others, made),
  ];
}

/** What is cut and punched by it, those after the second in a stack behind: its holes and the sign of its marked face, where the first has these; its number. */
function madeMarks(piece: Traced, others: number, box: Box): readonly Mark[] {
  const behind = Math.min(others, 3) - 1;
  const middle: Vec2 = [box.x + box.width / 2, box.y + box.height / 2];
  return [
    ...Array.from({ length: behind }, (_, index) => (behind - index) * BEHIND).flatMap((by) => sheet({ ...box, x: box.x - by, y: box.y - by }, 'panel')),
    ...sheet(box, 'panel'), ...holesIn(piece, box), ...(piece.holes.length === 0 ? [] : faceSign([box.x + 3, box.y + box.height - 3], 'there', 0.7)),
    ...(others === 1 ? [numbered(2, middle)] : [numbered(2, [middle[0] - 8, middle[1]]), line(pens.motion, [middle[0] - 3, middle[1]], [middle[0] + 3, middle[1]]), numbered(others + 1, [middle[0] + 8, middle[1]])]),
  ];
}

/** The marks of the first at its edges; carried down over the edges of a stack, with how far they are; then drawn across each of the others. */
function edgesMarks(piece: Traced, others: number, width: number): readonly Mark[] {
  const y = HIGH / 2;
  const first = planBox(piece, [15, y], SMALL);
  const last = planBox(piece, [width - 26, y], SMALL);
  return [
    ...sheet(first, 'panel'), ...ticks(piece, first), ...signOn(piece, first), numbered(1, [first.x + first.width / 2, y]), ...onwardsFrom([30, y]),
    ...stackMarks(piece, Math.min(others, 3) + 1, [40, y]), ...onwardsFrom([width - 51, y]),
    ...sheet(last, 'white'), ...ticks(piece, last), ...signOn(piece, last), ...(piece.holes.length === 0 ? across(piece, last) : holesIn(piece, last)), ...pencilAt(inBox(piece, last, piece.holes.at(-1) ?? [piece.places[0].at(-1) ?? 0, piece.places[1].at(-1) ?? 0])),
    ...othersNumbered(others, [width - 6, y]),
  ];
}

/** Where lines are drawn, the sign of the marked face beside their lower left corner: each piece gets it, where the first has it. */
const signOn = (piece: Traced, box: Box): readonly Mark[] => {
  const [x, y] = inBox(piece, box, [piece.places[0][0] ?? 0, piece.places[1][0] ?? 0]);
  return piece.holes.length > 0 ? [] : faceSign([x + 1.6, y - 1.6], 'there', 0.7);
};

const TICK = 2.5;

/** Short lines at the edges of a piece, at the places of its marks. */
const ticks = (piece: Traced, box: Box): readonly Mark[] => [
  ...piece.places[0].map((at) => inBox(piece, box, [at, 0])[0]).flatMap((x) => [[box.y, box.y + TICK], [box.y + box.height, box.y + box.height - TICK]].map(([from = 0, to = 0]) => line({ ...pens.motion, width: 0.9 }, [x, from], [x, to]))),
  ...piece.places[1].map((at) => inBox(piece, box, [0, at])[1]).flatMap((y) => [[box.x, box.x + TICK], [box.x + box.width, box.x + box.width - TICK]].map(([from = 0, to = 0]) => line({ ...pens.motion, width: 0.9 }, [from, y], [to, y]))),
];

/** Between the first and the last marks that lie opposite each other, the lines that join them. */
function across(piece: Traced, box: Box): readonly Mark[] {
  const [xs, ys] = piece.places;
  const ends = (all: readonly number[], side: number): Vec2 => (all.length < 2 ? [0, side] : [all[0] ?? 0, all.at(-1) ?? side]);
  const [[left, right], [low, high]] = [ends(xs, piece.sides[0]), ends(ys, piece.sides[1])];
  return [
    ...xs.map((x) => line(pens.newInside, inBox(piece, box, [x, low]), inBox(piece, box, [x, high]))),
    ...ys.map((y) => line(pens.newInside, inBox(piece, box, [left, y]), inBox(piece, box, [right, y]))),
  ];
}

/** So many sheets on each other, seen from a corner, the first on top; the marks go straight down over their edges, in front and at the right, and the outer ones have their figures. */
function stackMarks(piece: Traced, count: number, [left, y]: Vec2): readonly Mark[] {
  const { width, height, slant, sheet: thick } = STACK;
  const top = y - 2;
  const low = top + count * thick;
  const front = (share: number, level: number): Vec2 => [left + share * width, level];
  const side = (share: number, level: number): Vec2 => [left + width + share * slant, level - share * height];
  const bands = Array.from({ length: count }, (_, index) => top + index * thick).flatMap((level, index): readonly Mark[] => {
    const fill = index === 0 ? 'panel' : 'white';
    return [[front, 'f'] as const, [side, 's'] as const].flatMap(([at]) => {
      const ring = [at(0, level), at(1, level), at(1, level + thick), at(0, level + thick)];
      return [area(fill, ring), outline(pens.edge, ring)];
    });
  });
  const face: readonly Vec2[] = [front(0, top), front(1, top), side(1, top), [left + slant, top - height]];
  const hull: readonly Vec2[] = [front(0, low), front(1, low), side(1, low), side(1, top), [left + slant, top - height], front(0, top)];
  const pen = { ...pens.motion, width: 0.9 };
  const [xs, ys] = piece.places.map((each, axis) => each.map((at) => ({ at, share: at / piece.sides[axis === 0 ? 0 : 1] })));
  const outer = (all: readonly { readonly at: number; readonly share: number }[]) => all.filter((_, index) => index === 0 || index === all.length - 1);
  const beside = left + width + slant + 3;
  const ahead = outer(xs ?? []);
  const middles = spread(ahead.map(({ share }, index) => front(share, low)[0] + (ahead.length > 1 && index === 1 ? 2 : -1)), ahead.map(({ at }, index) => (toldWidth(tell.mm(at), cap, 400) + toldWidth(tell.mm(ahead[index - 1]?.at ?? at), cap, 400)) / 2 + 1));
  const right = outer(ys ?? []).toSorted((one, other) => other.share - one.share);
  const levels = spread(right.map(({ share }) => side(share, low)[1]), right.map(() => cap + 1));
  return [
    area('panel', face), outline(pens.edge, face), ...bands, outline(pens.cut, hull),
    numbered(1, [left + (width + slant) / 2, top - height / 2]),
    ...(xs ?? []).flatMap(({ share }) => [line(pen, front(share, top), front(share, low)), line(pen, front(share, top), [front(share, top)[0] + slant * 0.16, top - height * 0.16])]),
    ...(ys ?? []).flatMap(({ share }) => [line(pen, side(share, top), side(share, low)), line(pen, side(share, top), [side(share, top)[0] - 3, side(share, top)[1]])]),
    ...ahead.map(({ at }, index) => told(at, [middles[index] ?? 0, low + 2.5 + cap / 2])),
    ...right.flatMap(({ at, share }, index) => {
      const level = levels[index] ?? 0;
      return [line(pens.dimension, side(share, low), [beside - 1, level]), told(at, [beside + toldWidth(tell.mm(at), cap, 400) / 2, level])];
    }),
    ...pencilAt(front((xs ?? [])[0]?.share ?? 0.5, low - 1)),
  ];
}

const told = (at: number, centre: Vec2): Mark => figure(tell.mm(at), centre, cap);
