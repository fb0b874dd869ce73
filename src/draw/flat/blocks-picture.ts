import type { Vec2 } from '../../model/index.ts';
import { tell, type PropCount, type Told } from '../../scene/index.ts';
import { atMost } from '../kit/at-most.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { earlier, pens } from '../kit/pens.ts';
import { ticked } from '../kit/right-wrong.ts';
import { toPicture } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';

/** Width of the small picture, and height of the row of one kind of block, mm of paper. */
const WIDE = 23.5;
const ROW = 21;
/** More, where a thickness is told. */
const LIMIT = 6;
const cap = capHeights.scene;
/** A block's front, and how far its top and side go back, mm of paper. */
const FRONT = { wide: 6.8, high: 7 } as const;
const BACK: Vec2 = [3, -2.4];

/** The blocks to put under, one row for each kind: how many, how high, and how thick at most where that matters, mm; then those that are there already, pale and ticked. */
export const blocksPicture = (blocks: readonly PropCount[], there: readonly PropCount[] = []): DrawnPicture =>
  toPicture({ width: WIDE, height: rowsHigh([...blocks, ...there]) }, blocksMarks(blocks, there));

const rowHigh = ({ most }: PropCount): number => (most === null ? ROW : ROW + LIMIT);
const rowsHigh = (blocks: readonly PropCount[]): number => blocks.reduce((sum, block) => sum + rowHigh(block), 0);

/** The marks of the picture, for the tests. */
export const blocksMarks = (blocks: readonly PropCount[], there: readonly PropCount[] = []): readonly Mark[] => [
  ...blocks.flatMap((block, index) => rowOf(block, rowsHigh(blocks.slice(0, index)), false)),
  ...there.flatMap((block, index) => rowOf(block, rowsHigh([...blocks, ...there.slice(0, index)]), true)),
];

/** So far after its number there is a tick, mm of paper. */
const TICK = 5;

function rowOf(block: PropCount, down: number, isThere: boolean): readonly Mark[] {
  const { count, high, most } = block;
  const [left, top] = [13.4, down + 4];
  const [right, foot] = [left + FRONT.wide, top + FRONT.high];
  const back = ([x, y]: Vec2): Vec2 => [x + BACK[0], y + BACK[1]];
  const [front, lid, side]: readonly (readonly Vec2[])[] = [
    [[left, top], [right, top], [right, foot], [left, foot]], [[left, top], [right, top], back([right, top]), back([left, top])], [[right, top], [right, foot], back([right, foot]), back([right, top])],
  ];
  const told = tell.times(count);
  const [wide, middle] = [toldWidth(told, capHeights.count, 700), down + rowHigh(block) - 4.5];
  return [
    ...[front ?? [], lid ?? [], side ?? []].flatMap((ring) => [area(isThere ? 'white' : 'panel', ring), outline(isThere ? earlier(pens.cut) : pens.cut, ring)]),
    ...linearDimension({ axis: 'y', told: tell.mm(high), ends: [top, foot], line: left - 3, feature: left - 0.6, cap, upright: true }),
    ...(most === null ? [] : thickness(tell.mm(most), [left, right], foot, cap)),
    figure(told, [wide / 2, middle], capHeights.count, 700), ...(isThere ? ticked([wide + TICK, middle]) : []),
  ];
}

/** How thick a block may be at most: from one side of its front to the other, under it. */
export function thickness(told: Told, [left, right]: Vec2, foot: number, high: number): readonly Mark[] {
  const y = foot + 2;
  return [
    ...[left, right].map((x) => line(pens.dimension, [x, foot + 0.6], [x, y + 1])),
    line(pens.dimension, [left, y], [right, y]), arrowhead([left, y], [-1, 0], 1.6), arrowhead([right, y], [1, 0], 1.6),
    ...atMost(told, [(left + right) / 2, y + 2 + high / 2], high),
  ];
}
