import type { Vec2 } from '../../model/index.ts';
import { area, circle, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { ringOf } from './wall-pieces.ts';

/** Half of the finder's width and height, its lamp over its middle, mm of paper. */
export const FINDER = { half: 4.2, high: 6.4, lamp: 3 } as const;

/** The finder from before: its lamp lights and it sounds where something is behind it. */
export function finder([x, y]: Vec2, isTelling: boolean): readonly Mark[] {
  const box = ringOf({ x: x - FINDER.half, y: y - FINDER.high, width: 2 * FINDER.half, height: 2 * FINDER.high });
  const lamp: Vec2 = [x, y - FINDER.lamp];
  const arc = (radius: number, side: number): Mark => line({ ...pens.motion, width: 0.9 }, ...Array.from({ length: 7 }, (_, index): Vec2 => {
    const angle = -0.7 + (index * 1.4) / 6;
    return [x + side * (FINDER.half - 3 + radius * Math.cos(angle)), lamp[1] + radius * Math.sin(angle)];
  }));
  return [
    area('white', box), outline({ ...pens.cut, width: 0.7 }, box), circle(lamp, 1.9, pens.cut, isTelling ? 'ink' : 'white'), ...[2, 4].map((down) => line(pens.edge, [x - 2.4, y + down], [x + 2.4, y + down])),
    ...(isTelling ? [-1, 1].flatMap((side) => [5, 7.6].map((radius) => arc(radius, side))) : []),
  ];
}
