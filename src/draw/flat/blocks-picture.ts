import type { Vec2 } from '../../model/index.ts';
import { tell, type PropCount } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, figure, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';

/** Width of the small picture, and height of the row of one height of block, mm of paper. */
const WIDE = 23.5;
const ROW = 21;
const cap = capHeights.scene;
/** A block's front, and how far its top and side go back, mm of paper. */
const FRONT = { wide: 6.8, high: 7 } as const;
const BACK: Vec2 = [3, -2.4];

/** The blocks to put under, one row for each height: how many, and how high, mm. */
export const blocksPicture = (blocks: readonly PropCount[]): DrawnPicture => toPicture({ width: WIDE, height: ROW * blocks.length }, blocksMarks(blocks));

/** The marks of the picture, for the tests. */
export const blocksMarks = (blocks: readonly PropCount[]): readonly Mark[] => blocks.flatMap(({ count, high }, index) => {
  const [left, top] = [13.4, ROW * index + 4];
  const [right, foot] = [left + FRONT.wide, top + FRONT.high];
  const back = ([x, y]: Vec2): Vec2 => [x + BACK[0], y + BACK[1]];
  const [front, lid, side]: readonly (readonly Vec2[])[] = [
    [[left, top], [right, top], [right, foot], [left, foot]], [[left, top], [right, top], back([right, top]), back([left, top])], [[right, top], [right, foot], back([right, foot]), back([right, top])],
  ];
  const told = tell.times(count);
  return [
    ...[front ?? [], lid ?? [], side ?? []].flatMap((ring) => [area('panel', ring), outline(pens.cut, ring)]),
    ...linearDimension({ axis: 'y', told: tell.mm(high), ends: [top, foot], line: left - 3, feature: left - 0.6, cap, upright: true }),
    figure(told, [toldWidth(told, capHeights.count, 700) / 2, ROW * (index + 1) - 4.5], capHeights.count, 700),
  ];
});
