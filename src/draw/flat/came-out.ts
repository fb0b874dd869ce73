import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, line, outline, ringedNumeral, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed } from '../kit/right-wrong.ts';
import { bareWall, crossAt, type WallHoles } from './bare-wall.ts';
import type { Box } from '../types.ts';
import { finder } from './finder.ts';
import { HIGH, plateOn, ringOf, SCALE, screwPlaces, wallSection, type Bracket, type WallShown } from './wall-pieces.ts';

const cap = capHeights.step;
/** Height of the picture, mm of paper. */
export const CAME_OUT = 52;
/** From its upper edge to the middle of the wall, mm of paper. */
export const CAME_OUT_MIDDLE = 28.5;
/** Thickness of wall shown and how far a bracket that does not hold has come out, mm. */
const THIN = 34;
const OUT = 26;
/** From the left edge to the wall that is marked anew, its width, and how far its holes are moved, mm of paper. */
const ANEW = { from: 37, wide: 66, moved: 14 } as const;

/** What came out, and the numbers of the small pictures: where it was pulled at, and where it goes on after the new holes are marked. */
export interface CameOut {
  readonly bracket: Bracket;
  readonly wall: WallShown;
  readonly holes: WallHoles;
  readonly pullAt: number;
  readonly drillAt: number;
}

/** The plate has come off the wall with its screws: no hole is used again, all are marked as high as before and so far aside, the item moves as far, and it goes on with the finder and with drilling. From the left edge and the middle, mm of paper. */
export const cameOut = ({ bracket, wall, holes, pullAt, drillAt }: CameOut, [x, y]: Vec2): readonly Mark[] => [
  ringedNumeral(tell.number(pullAt), [x + 4.5, y - (HIGH * SCALE) / 2 - 5], capHeights.order, pens.edge), ...crossed([x + 13, y - (HIGH * SCALE) / 2 - 5], 1.2),
  ...offTheWall(bracket, wall, [x + 4, y]), ...goesOn([x + 28, y]), ...markedAnew(wall, holes, [x + ANEW.from, y]),
  ...goesOn([x + ANEW.from + ANEW.wide + 2.5, y]), ...finder([x + ANEW.from + ANEW.wide + 15.5, y], false), ...goesOn([x + ANEW.from + ANEW.wide + 20.5, y]), ringedNumeral(tell.number(drillAt), [x + ANEW.from + ANEW.wide + 32, y], capHeights.order, pens.edge),
];

const goesOn = ([x, y]: Vec2): readonly Mark[] => [line({ ...pens.motion, width: 0.9 }, [x, y], [x + 4, y]), arrowhead([x + 8, y], [1, 0], 4.4)];

/** The bracket with its screws before the holes that they have torn. */
function offTheWall(bracket: Bracket, wall: WallShown, [left, y]: Vec2): readonly Mark[] {
  const face: Vec2 = [left + THIN * SCALE, y];
  const off: Vec2 = [face[0] + OUT * SCALE, y];
  return [
    ...wallSection(wall, face, THIN),
    ...screwPlaces(bracket, face).flatMap(([px, py]) => [
      area('white', [[px, py - 3.4], [px - 5, py - 1], [px - 5, py + 1], [px, py + 3.4]]), line(pens.cut, [px, py - 3.4], [px - 5, py - 1], [px - 5, py + 1], [px, py + 3.4]),
      area('ink', [[px - 2, py], [off[0], py - 0.9], [off[0] + bracket.thickness * SCALE, py - 0.9], [off[0] + bracket.thickness * SCALE, py + 0.9], [off[0], py + 0.9]]),
    ]),
    ...plateOn(bracket, off),
  ];
}

/** Width of an item that has one bracket, and of its posts and boards, mm of paper. */
const ITEM = 20;
const POST = 3;
const BOARD = 1.6;

/** The bare wall with the old holes, crossed out, and the new ones as high and so far aside; the item before it, where it stood and where it is moved to. */
function markedAnew(wall: WallShown, holes: WallHoles, [left, y]: Vec2): readonly Mark[] {
  const { marks, top, floor, columns, rows } = bareWall(wall, holes, { left, wide: ANEW.wide, y, beyond: 3, free: 6 + ANEW.moved });
  const [first = left, last = left] = [columns[0], columns.at(-1)];
  const item: Box = { x: Math.min(first, last - ITEM), y: rows[0] - 4, width: last - Math.min(first, last - ITEM), height: floor - rows[0] + 4 };
  const middle: Vec2 = [item.x + item.width / 2 + ANEW.moved / 2, (rows[0] + rows[1]) / 2];
  return [
    ...marks, ...stoodHere(item), ...standsHere({ ...item, x: item.x + ANEW.moved }),
    ...columns.flatMap((column) => rows.flatMap((row) => [...oldHole([column, row]), ...crossAt([column + ANEW.moved, row])])),
    ...linearDimension({ axis: 'x', told: tell.mm(holes.moved), ends: [first, first + ANEW.moved], line: top - 3.5, feature: [rows[0] - 3, rows[0] - 3], cap }),
    line({ ...pens.motion, width: 2.4, colour: 'white' }, [middle[0] - 6.6, middle[1]], [middle[0] + 2.8, middle[1]]), ...bold([middle[0] - 6, middle[1]], 8),
  ];
}

/** An arrow to the right, its shaft so long. */
const bold = ([x, y]: Vec2, far: number): readonly Mark[] => [line({ ...pens.motion, width: 1.2 }, [x, y], [x + far, y]), arrowhead([x + far + 5, y], [1, 0], 5.4)];

/** Where the item stood: its outline. */
const stoodHere = ({ x, y, width, height }: Box): readonly Mark[] => [line({ ...pens.halfCut, width: 0.35 }, [x - POST / 2, y + height], [x - POST / 2, y], [x + width + POST / 2, y], [x + width + POST / 2, y + height])];

/** The item seen from before: posts and boards. */
function standsHere({ x, y, width, height }: Box): readonly Mark[] {
  const boards = [0, 0.64].map((share) => ringOf({ x, y: y + share * height, width, height: BOARD }));
  const posts = [x, x + width].map((at) => ringOf({ x: at - POST / 2, y, width: POST, height }));
  return [...boards, ...posts].flatMap((ring) => [area('white', ring), outline(pens.cut, ring)]);
}

/** A hole that is not used again. */
const oldHole = ([x, y]: Vec2): readonly Mark[] => [circle([x, y], 2.9, null, 'white'), circle([x, y], 1.1, pens.edge, 'core'), ...[1, -1].map((way) => line({ ...pens.motion, width: 0.7 }, [x - 2.2, y - 2.2 * way], [x + 2.2, y + 2.2 * way]))];
