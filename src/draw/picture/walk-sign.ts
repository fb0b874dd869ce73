import type { Vec2 } from '../../model/index.ts';
import type { Walk } from '../../scene/index.ts';
import { area, arrowhead, circle, line, outline, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';

/** The sign's size, mm of paper. */
export const walkSign = { width: 24, height: 36 } as const;

/** The work seen from above in its middle, its front towards the reader, and how far round it one walks. */
const WORK = { wide: 11, high: 8 } as const;
const ROUND = 9;

/**
 * Who works walks round the work, which stays where it is: the work from above, the worker pale where he was and black
 * where he is now, looking at it, an arrow from one to the other. mm of paper from the upper left corner.
 */
export function walkMarks(walk: Walk): readonly Mark[] {
  const middle: Vec2 = [walkSign.width / 2 - 2, walkSign.height / 2];
  const [front, back] = [1, -1] as const;
  const now = walk === 'to-front' ? front : back;
  const { wide, high } = WORK;
  const work: readonly Vec2[] = [[-wide / 2, -high / 2], [wide / 2, -high / 2], [wide / 2, high / 2], [-wide / 2, high / 2]].map(([x = 0, y = 0]): Vec2 => [middle[0] + x, middle[1] + y]);
  return [
    area('panel', work), outline(pens.motion, work),
    ...worker(middle, now, true),
    ...(walk === 'behind' ? [] : [...worker(middle, now === front ? back : front, false), ...way(middle, now)]),
  ];
}

/** Head and shoulders from above, before (1) or behind (−1) the work, the nose towards it. */
function worker([x, y]: Vec2, side: 1 | -1, isNow: boolean): readonly Mark[] {
  const at: Vec2 = [x, y + side * 12];
  const shoulders: readonly Vec2[] = Array.from({ length: 17 }, (_, step): Vec2 => [at[0] + 4.4 * Math.cos((2 * Math.PI * step) / 16), at[1] + 2 * Math.sin((2 * Math.PI * step) / 16)]);
  return [
    ...(isNow ? [area('ink', shoulders)] : [area('white', shoulders), outline({ ...pens.edge, colour: 'faded' }, shoulders)]),
    circle([at[0], at[1] - side * 0.6], 2, { ...pens.edge, colour: isNow ? 'ink' : 'faded' }, 'white'),
    line({ ...pens.motion, colour: isNow ? 'ink' : 'faded' }, [at[0], at[1] - side * 2.6], [at[0], at[1] - side * 4.2]),
  ];
}

/** Half round on the right. */
function way([x, y]: Vec2, now: 1 | -1): readonly Mark[] {
  const at = (share: number): Vec2 => [x + 3 + (ROUND - 1) * Math.sin(Math.PI * share), y - now * 11 * Math.cos(Math.PI * share)];
  const path = Array.from({ length: 17 }, (_, step) => at(0.16 + (0.6 * step) / 16));
  const [tip, before] = [at(0.86), at(0.76)];
  return [line(band(1), ...path), arrowhead(tip, [tip[0] - before[0], tip[1] - before[1]], 3.6, 3)];
}
