import type { Vec2 } from '../../model/index.ts';
import { area, arrowhead, circle, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { ticked } from '../kit/right-wrong.ts';
import { ringOf } from './wall-pieces.ts';

/** Of a balance, mm of paper: its hook, its case, the ring beyond that; the arrow of the pull. */
export const BALANCE = { hook: 3.4, long: 11, half: 4, ring: 1.7, arrow: 6 } as const;

/** A balance whose hook holds a cord's end, and which is drawn straight out to the right. */
export function balance([x, y]: Vec2): readonly Mark[] {
  const [left, right] = [x + BALANCE.hook, x + BALANCE.hook + BALANCE.long];
  const body = ringOf({ x: left, y: y - BALANCE.half, width: BALANCE.long, height: 2 * BALANCE.half });
  const pull = right + 2 * BALANCE.ring;
  const hook = Array.from({ length: 9 }, (_, index): Vec2 => {
    const angle = Math.PI * (0.5 + (1.25 * index) / 8);
    return [x + 0.4 + 1.7 * Math.cos(angle), y - 1.7 * Math.sin(angle)];
  });
  return [
    line({ ...pens.motion, width: 0.9 }, [left, y], [x + 1.8, y], ...hook),
    area('white', body), outline(pens.cut, body),
    ...[0.2, 0.4, 0.6, 0.8].map((share) => line(pens.edge, [left + share * BALANCE.long, y - BALANCE.half], [left + share * BALANCE.long, y - BALANCE.half + 2.2])),
    line(pens.motion, [left + 0.6 * BALANCE.long, y + 2.6], [left + 0.6 * BALANCE.long, y - 1]),
    circle([right + BALANCE.ring, y], BALANCE.ring, pens.cut, 'white'),
    line(pens.motion, [pull + 0.6, y], [pull + BALANCE.arrow - 4, y]), arrowhead([pull + BALANCE.arrow, y], [1, 0], 5),
  ];
}

/** The same, and that what it pulls at holds. */
export const balanceHooked = ([x, y]: Vec2): readonly Mark[] => [...balance([x, y]), ...ticked([x + BALANCE.hook + BALANCE.long + 2 * BALANCE.ring + BALANCE.arrow + 4.4, y])];
