import type { Vec2 } from '../../model/index.ts';
import { tell, type PropCount } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { thickness } from './blocks-picture.ts';
import { pressedDown, type Firmness } from './trial.ts';

/** Width of the picture, and height of the row of one kind of block, mm of paper. */
const WIDE = 154;
const ROW = 34;
/** More, where a thickness is told. */
const LIMIT = 5;
const cap = capHeights.scene;
/** What is put under is drawn so high, whatever its height, and so far down in its row; a cushion sinks so far where it is pressed. */
const HIGH = 15;
const TOP = 12;
const SUNK = 1.6;
/** A block's front, narrower where a thickness is told, and how far its top and side go back. */
const FRONT = { left: 16, wide: 14, thin: 8 } as const;
const BACK: Vec2 = [5, -4];

/** All blocks to fetch, one row for each kind: how many, how high, how thick at most, that wood or brick will do, and nothing soft. */
export const fetchedBlocksPicture = (blocks: readonly PropCount[]): DrawnPicture => toPicture({ width: WIDE, height: rowsHigh(blocks) }, fetchedBlocksMarks(blocks));

const rowsHigh = (blocks: readonly PropCount[]): number => blocks.reduce((sum, { most }) => sum + (most === null ? ROW : ROW + LIMIT), 0);

/** The marks of the picture, for the tests. */
export const fetchedBlocksMarks = (blocks: readonly PropCount[]): readonly Mark[] => blocks.flatMap(({ count, high, most }, index): readonly Mark[] => {
  const down = rowsHigh(blocks.slice(0, index)) + TOP;
  return [...counted(count, high, down, most === null ? FRONT.wide : FRONT.thin), ...(most === null ? [] : thickness(tell.mm(most), [FRONT.left, FRONT.left + FRONT.thin], down + HIGH, cap)), ...firm(high, down), ...soft(down)];
});

const rectangle = (left: number, top: number, wide: number, high: number): readonly Vec2[] => [[left, top], [left + wide, top], [left + wide, top + high], [left, top + high]];
const filled = (ring: readonly Vec2[], fill: 'panel' | 'white' = 'panel'): readonly Mark[] => [area(fill, ring), outline(pens.cut, ring)];

function counted(count: number, high: number, top: number, wide: number): readonly Mark[] {
  const [left, right, foot] = [FRONT.left, FRONT.left + wide, top + HIGH];
  const back = ([x, y]: Vec2): Vec2 => [x + BACK[0], y + BACK[1]];
  const told = tell.times(count);
  return [
    ...filled(rectangle(left, top, wide, HIGH)),
    ...filled([[left, top], [right, top], back([right, top]), back([left, top])]),
    ...filled([[right, top], [right, foot], back([right, foot]), back([right, top])]),
    ...linearDimension({ axis: 'y', told: tell.mm(high), ends: [top, foot], line: left - 4, feature: left - 0.6, cap, upright: true }),
    figure(told, [right + BACK[0] + 4 + toldWidth(told, capHeights.count, 700) / 2, foot - HIGH / 2], capHeights.count, 700),
  ];
}

/** A piece of wood and a brick, as high as each other, which do not give where they are pressed. */
function firm(high: number, top: number): readonly Mark[] {
  const foot = top + HIGH;
  const [wood, brick] = [{ left: 79, wide: 13 }, { left: 97, wide: 18 }];
  const ring = (radius: number): Mark => line(pens.edge, ...arc([wood.left + wood.wide * 0.4, foot], radius, wood.left, wood.left + wood.wide, top));
  return [
    ...filled(rectangle(wood.left, top, wood.wide, HIGH), 'white'), ...[2.5, 5, 7.7, 10.5, 13].map(ring),
    ...filled(rectangle(brick.left, top, brick.wide, HIGH)), ...[0.2, 0.5, 0.8].map((share) => circle([brick.left + brick.wide * share, top + HIGH / 2], 1.9, pens.cut, 'white')),
    ...pressed([wood.left + wood.wide / 2, top - 1]), ...pressed([brick.left + brick.wide / 2, top - 1]),
    line(pens.cut, [70, foot], [119, foot]),
    ...linearDimension({ axis: 'y', told: tell.mm(high), ends: [top, foot], line: 71, feature: wood.left - 0.6, cap, upright: true }),
    ...ticked([122, foot - 3]),
  ];
}

/** How a block or a cushion is pressed, and from how high over it the arrow comes, mm of paper. */
const PRESSED: Firmness = { shaft: 1.2, long: 4, wide: 3.4 };
const FROM = 8;
const pressed = ([x, y]: Vec2): readonly Mark[] => pressedDown([x, y - FROM], y, PRESSED);

/** A cushion that gives. */
function soft(top: number): readonly Mark[] {
  const foot = top + HIGH;
  const [left, right] = [129, 143];
  const sunk = top + HIGH * 0.45;
  const bulge = (x: number, way: number): readonly Vec2[] => [[x, sunk - 2], [x + way * 1.6, sunk + 1], [x + way * 2, (sunk + foot) / 2], [x + way * 1.6, foot - 1.5], [x, foot]];
  return [
    ...filled([...bulge(right, 1), ...bulge(left, -1).toReversed(), [left + 3, sunk + 0.2], [(left + right) / 2, sunk + SUNK], [right - 3, sunk + 0.2]], 'white'),
    ...pressed([(left + right) / 2, sunk + SUNK]),
    line(pens.cut, [left - 3, foot], [right + 3, foot]),
    ...crossed([151, foot - 3]),
  ];
}

/** The part of an upper half circle that lies between two sides and under a top. */
function arc([x, y]: Vec2, radius: number, left: number, right: number, top: number): readonly Vec2[] {
  const points = Array.from({ length: 41 }, (_, index): Vec2 => [x + radius * Math.cos((Math.PI * index) / 40), y - radius * Math.sin((Math.PI * index) / 40)]);
  return points.filter(([px, py]) => px >= left && px <= right && py >= top);
}
