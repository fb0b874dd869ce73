import type { Vec2 } from '../../model/index.ts';
import { WHEEL_RIM } from '../../plan/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, circle, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { pressedDown, type Firmness } from './trial.ts';

/** How the wheel is pressed: lightly, or home; more than that where it was too little. */
export type Pressed = 'light' | 'home' | 'more';

/** Share of the height that the wheel takes, and that its fork reaches up to. */
const SHARE = { disc: 0.6, fork: 0.72 } as const;
/** From the wheel to an arm of its fork, and how thick that is, mm of paper. */
const ARM = { clear: 0.5, wide: 0.9 } as const;
/** Half of the handle's width, mm of paper. */
const HANDLE = 1.9;
const FINE = 8;

/** How far the fork reaches to either side, mm of paper. */
const reach = (scale: number): number => WHEEL_RIM * scale + ARM.clear + ARM.wide;

/** The arrow beside the wheel by how it is pressed. */
const ARROWS: Readonly<Record<Pressed, Firmness>> = {
  light: { shaft: 0.4, long: 2.8, wide: 1.6 }, home: { shaft: 1.6, long: 4.6, wide: 4.4 }, more: { shaft: 3, long: 6, wide: 7 },
};

/** The creasing wheel seen along the crease: its rim rolls in the dent, an axle holds it in a fork, so high up to the end of its handle, mm of paper; the panel's scale; and how it is pressed. */
export function wheelMarks([x, y]: Vec2, high: number, pressed: Pressed, scale: number): readonly Mark[] {
  const rim = WHEEL_RIM * scale;
  const disc = high * SHARE.disc;
  const axle = y - disc / 2;
  const fork = y - high * SHARE.fork;
  const out = reach(scale);
  const wheel = [...half([x, y - rim], rim, 1), ...half([x, y - disc + rim], rim, -1)];
  const arms = [-1, 1].map((side) => cornersOf({ x: side < 0 ? x - out : x + out - ARM.wide, y: fork, width: ARM.wide, height: axle + 1.1 - fork }));
  const pin = cornersOf({ x: x - out - 0.9, y: axle - 0.45, width: 2 * out + 1.8, height: 0.9 });
  return [
    area('white', wheel), outline(pens.cut, wheel),
    ...arms.map((arm) => area('ink', arm)), area('ink', cornersOf({ x: x - out, y: fork - 0.4, width: 2 * out, height: 1.3 })), area('ink', pin),
    area('ink', cornersOf({ x: x - HANDLE, y: y - high, width: 2 * HANDLE, height: high - (y - fork) })),
    ...pressedDown([x - out - 1.4 - ARROWS[pressed].wide / 2, y - high], axle + 1, ARROWS[pressed]),
  ];
}

/** Half of a round end. */
const half = ([x, y]: Vec2, radius: number, way: 1 | -1): readonly Vec2[] => Array.from({ length: FINE + 1 }, (_, step): Vec2 => {
  const angle = (Math.PI * step) / FINE;
  return [x + way * radius * Math.cos(angle), y + way * radius * Math.sin(angle)];
});

/** The wheel from above on a level line, its fork and handle behind it, mm of paper: the place is the wheel's middle. */
export function wheelFromAbove([x, y]: Vec2): readonly Mark[] {
  const disc = cornersOf({ x: x - 4.6, y: y - 1, width: 9.2, height: 2 });
  const arms = [-1, 1].map((side) => cornersOf({ x: x - 6.6, y: y + (side < 0 ? -2.4 : 1.5), width: 7.4, height: 0.9 }));
  return [
    area('white', disc), outline(pens.cut, disc), ...arms.map((arm) => area('ink', arm)),
    area('ink', cornersOf({ x: x - 0.5, y: y - 2.8, width: 1, height: 5.6 })), area('ink', cornersOf({ x: x - 6.6, y: y - 2.4, width: 1.1, height: 4.8 })),
    area('ink', cornersOf({ x: x - 13, y: y - 1.5, width: 6.6, height: 3 })), circle([x, y], 0.5, null, 'white'),
  ];
}
