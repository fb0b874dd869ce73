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

/** A hand that presses down from above: the middle of the upper face that it lies on; its fingers reach over that. */
export function handDown([x, y]: Vec2): readonly Mark[] {
  const fingers = [-1.5, -0.5, 0.5, 1.5].map((place) => x + place * (FINGER.wide + FINGER.gap));
  const half = 2 * FINGER.wide + 1.5 * FINGER.gap;
  const open: readonly Vec2[] = [[x - ARM.half, y - HAND_HIGH], [x - ARM.half - 0.6, y - PALM], [x - half, y], [x + half, y], [x + ARM.half + 0.6, y - PALM], [x + ARM.half, y - HAND_HIGH]];
  return [
    area('white', open), line(pen, ...open.slice(0, 3)), line(pen, ...open.slice(3)),
    ...fingers.flatMap((middle): readonly Mark[] => {
      const radius = FINGER.wide / 2;
      const round = Array.from({ length: 9 }, (_, step): Vec2 => [middle + radius * Math.cos((Math.PI * step) / 8), y + FINGER.down - radius + radius * Math.sin((Math.PI * step) / 8)]);
      const ring: readonly Vec2[] = [[middle + radius, y - 0.6], ...round, [middle - radius, y - 0.6]];
      return [area('white', ring), outline(pen, ring)];
    }),
  ];
}

/** The same from below: the middle of the lower face that it holds. */
export const handUp = ([x, y]: Vec2): readonly Mark[] => mirrored(handDown([x, y]), ([px, py]) => [px, 2 * y - py]);

const mirrored = (marks: readonly Mark[], over: (place: Vec2) => Vec2): readonly Mark[] => marks.flatMap((mark): readonly Mark[] => {
  switch (mark.mark) {
    case 'line': return [{ ...mark, points: mark.points.map(over) }];
    case 'area': return [{ ...mark, rings: mark.rings.map((ring) => ring.map(over)) }];
    default: throw new RangeError(`a mark “${mark.mark}” of a hand cannot be mirrored`);
  }
});

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
