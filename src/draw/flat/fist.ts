import type { Vec2 } from '../../model/index.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { onBody, type AtStrip } from './leaning-knife.ts';
import { KNIFE } from './padded-knife.ts';

/** A finger, mm: its thickness, and how far its tip reaches past the body's back; where the lowest lies on the body, from its foot. */
const FINGER = { thick: 16, past: 9, from: 8, count: 4 } as const;
/** How far the palm reaches past the body on the side of its sharp edge, and how far the thumb lies up along the body, mm. */
const PALM = 16;
const THUMB = 17;
/** The arm on paper, mm: how long, half of its width, and how much it rises. */
const ARM = { long: 14, half: 6.4, rise: 3 } as const;

const pen = { ...pens.cut, width: 0.5, round: true } as const;

/** A hand that grips a knife's body, seen from the side: its fingers lie round that one over the other, its thumb up along it, the arm on the side that the knife is pulled to. */
export function fistRound(at: AtStrip): readonly Mark[] {
  const on = onBody(at);
  const top = FINGER.from + FINGER.count * FINGER.thick;
  const [low, high] = [on(FINGER.from, -2), on(top, -2)];
  const [under, over] = [on(FINGER.from + 6, -PALM), on(top - 12, -PALM)];
  const middle = (under[1] + over[1]) / 2;
  const [near, far] = [over[0] + 5, over[0] + 5 + ARM.long];
  const hand: readonly Vec2[] = [low, under, [near, middle + ARM.half], [far, middle + ARM.half - ARM.rise], [far, middle - ARM.half - ARM.rise], [near, middle - ARM.half], over, high];
  return [
    ...thumb(on, top), area('white', hand), line(pen, ...hand.slice(0, 4)), line(pen, ...hand.slice(4)),
    ...Array.from({ length: FINGER.count }, (_, index) => finger(on, FINGER.from + index * FINGER.thick)).flat(),
  ];
}

type OnBody = (far: number, across: number) => Vec2;

/** A finger across the body, round at its tip beyond the body's back. */
function finger(on: OnBody, low: number): readonly Mark[] {
  const radius = FINGER.thick / 2;
  const end = KNIFE.body + FINGER.past - radius;
  const tip = Array.from({ length: 9 }, (_, step): Vec2 => on(low + radius - radius * Math.cos((Math.PI * step) / 8), end + radius * Math.sin((Math.PI * step) / 8)));
  const ring = [on(low, -3), ...tip, on(low + FINGER.thick, -3)];
  return [area('white', ring), line(pen, ...ring)];
}

/** The thumb up along the body, from behind the fingers. */
function thumb(on: OnBody, top: number): readonly Mark[] {
  const radius = FINGER.thick / 2;
  const to = top + THUMB - radius;
  const middle = KNIFE.body / 2;
  const tip = Array.from({ length: 9 }, (_, step): Vec2 => on(to + radius * Math.sin((Math.PI * step) / 8), middle - radius * Math.cos((Math.PI * step) / 8)));
  const ring = [on(top - 4, middle - radius), ...tip, on(top - 4, middle + radius)];
  return [area('white', ring), outline(pen, ring)];
}
