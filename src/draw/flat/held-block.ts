import type { Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';
import { stripesAcross } from './hands.ts';
import { woodMarks } from './punched-section.ts';

/** A block of wood held behind a wall, mm of paper: its height and half its width; a finger's width, how far fingers lie on it, and how far the arm reaches under it. */
const BLOCK = { high: 8, half: 15 } as const;
const FINGER = { wide: 3.2, gap: 0.4, up: 5 } as const;
const ARM = { half: 3.6, low: 5 } as const;
const PALM = 3.6;

/** Half the block's width, and the room under the wall, mm of paper. */
export const HELD_HALF = BLOCK.half;
export const HELD_HIGH = BLOCK.high + PALM + ARM.low;

/** A block of wood, held from below by a hand of the second person that presses it against a wall: the middle of its upper face. */
export function heldBlock([x, y]: Vec2): readonly Mark[] {
  const foot = y + BLOCK.high;
  const fingers = [-1.5, -0.5, 0.5, 1.5].map((place) => x + place * (FINGER.wide + FINGER.gap));
  const half = 2 * FINGER.wide + 1.5 * FINGER.gap;
  const palm: readonly Vec2[] = [[x - half, foot], [x + half, foot], [x + ARM.half + 1, foot + PALM], [x + ARM.half, foot + PALM + ARM.low], [x - ARM.half, foot + PALM + ARM.low], [x - ARM.half - 1, foot + PALM]];
  const wood = cornersOf({ x: x - BLOCK.half, y, width: 2 * BLOCK.half, height: BLOCK.high });
  return [
    area('white', wood), ...woodMarks({ x: x - BLOCK.half, y, width: 2 * BLOCK.half, height: BLOCK.high }),
    area('white', palm), line(pens.cut, ...[4, 5, 0].map((corner) => palm[corner] ?? [x, foot] as const)), line(pens.cut, ...[1, 2, 3].map((corner) => palm[corner] ?? [x, foot] as const)),
    ...stripesAcross((across, on) => [x + across, foot + on], { from: PALM + ARM.low, to: PALM }, { from: ARM.half, to: ARM.half + 1 }),
    ...fingers.flatMap((middle): Mark[] => {
      const ring = fingerRing(middle, foot);
      return [area('white', ring), outline(pens.cut, ring)];
    }),
    ...[-1, 1].flatMap((side) => pressed([x + side * (half + 3.6), foot + 1.4])),
  ];
}

/** A finger that lies on the block, round at its end. */
const fingerRing = (x: number, foot: number): readonly Vec2[] => {
  const radius = FINGER.wide / 2;
  const round = Array.from({ length: 9 }, (_, step): Vec2 => [x + radius * Math.cos((Math.PI * step) / 8), foot - FINGER.up + radius - radius * Math.sin((Math.PI * step) / 8)]);
  return [[x + radius, foot + 1], ...round, [x - radius, foot + 1]];
};

/** It is pressed up. */
const pressed = ([x, y]: Vec2): readonly Mark[] => [line(band(1), [x, y + 6], [x, y + 3]), arrowhead([x, y], [0, -1], 3.6, 3)];
