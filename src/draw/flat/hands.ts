import type { Vec2 } from '../../model/index.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

const pen = { ...pens.cut, width: 0.5, round: true } as const;

/** A finger's width, how far it reaches down, and the white between two; the palm over the fingers and the arm, mm of paper. */
const FINGER = { wide: 2.7, down: 3.4, gap: 0.3 } as const;
const PALM = 3.4;
const ARM = { half: 3, up: 5.4 } as const;

/** How high a hand that presses down stands over what it presses on, mm of paper. */
export const HAND_HIGH = PALM + ARM.up;

/** A hand that presses down from above: the middle of the upper face that it lies on; its fingers reach over that. Drawn at a size against its own. */
export function handDown([x, y]: Vec2, size = 1): readonly Mark[] {
  const at = (right: number, down: number): Vec2 => [x + size * right, y + size * down];
  const half = 2 * FINGER.wide + 1.5 * FINGER.gap;
  const open: readonly Vec2[] = [at(-ARM.half, -HAND_HIGH), at(-ARM.half - 0.6, -PALM), at(-half, 0), at(half, 0), at(ARM.half + 0.6, -PALM), at(ARM.half, -HAND_HIGH)];
  return [
    area('white', open), line(pen, ...open.slice(0, 3)), line(pen, ...open.slice(3)),
    ...[-1.5, -0.5, 0.5, 1.5].flatMap((place): readonly Mark[] => {
      const [middle, radius] = [place * (FINGER.wide + FINGER.gap), FINGER.wide / 2];
      const round = Array.from({ length: 9 }, (_, step): Vec2 => at(middle + radius * Math.cos((Math.PI * step) / 8), FINGER.down - radius + radius * Math.sin((Math.PI * step) / 8)));
      const ring: readonly Vec2[] = [at(middle + radius, -0.6), ...round, at(middle - radius, -0.6)];
      return [area('white', ring), outline(pen, ring)];
    }),
  ];
}

/** A hand that pushes: its palm, seen from the side, from the place that it pushes at. */
const PUSHES: readonly Vec2[] = [[-11, -2.3], [-8, -2.5], [-4.8, -3.8], [-3.6, -8.4], [-2.6, -9.2], [-0.8, -9], [0, -8], [0, 3.2], [-1, 4.4], [-4, 4.2], [-8, 2.7], [-11, 2.5]];
const THUMB: readonly Vec2[] = [[-5, -0.6], [-3, -2.8], [-1.2, -4.4], [-0.6, -3.4], [-2.2, -1.2], [-3.2, 0.6]];

/** How far a pushing hand with its arm reaches back, and its fingers over the place that it pushes at, mm of paper. */
export const HAND_LONG = 11;
export const PALM_HIGH = 9.6;

/** A hand that pushes to the right (1) or to the left (−1) at a place. */
export function handPushing([x, y]: Vec2, way: number): readonly Mark[] {
  const on = (points: readonly Vec2[]): readonly Vec2[] => points.map(([dx, dy]): Vec2 => [x + way * dx, y + dy]);
  return [area('white', on(PUSHES)), line(pen, ...on(PUSHES)), line(pens.edge, ...on(THUMB))];
}
