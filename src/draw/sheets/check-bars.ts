import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { figure, line, upwards } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import { leftBand } from './room.ts';
import { pens } from '../kit/pens.ts';
import { tell } from '../kit/told.ts';

/** What a bar must measure on paper, mm. */
export const barLength = 100;
const cap = 3.5;
/** Where the bars stand outside the window, mm from its edge. */
const off = 2.5;
const endTick = 5;
const tick = 2.2;

/** Both bars begin at the window's upper left corner: one along its upper edge, one down its left edge. mm of the sheet. */
function barStarts({ x, y }: Box): { readonly level: Vec2; readonly upright: Vec2 } {
  return { level: [x, y - off], upright: [x - off, y] };
}

/** The bars of 100 mm in both directions, with a stroke every 10 mm. */
export function checkBars(window: Box): readonly Mark[] {
  const { level, upright } = barStarts(window);
  const across = (at: number, length: number): readonly [Vec2, Vec2] => [[level[0] + at, level[1]], [level[0] + at, level[1] - length]];
  const down = (at: number, length: number): readonly [Vec2, Vec2] => [[upright[0], upright[1] + at], [upright[0] - length, upright[1] + at]];
  return [
    ...bar(across, endTick),
    ...bar(down, endTick),
    figure(tell.measure(barLength), [level[0] + 65, level[1] - endTick - 2.2], cap, 700),
    figure(tell.measure(barLength), [upright[0] - tick - 2.4, upright[1] + barLength / 2], cap, 700, upwards),
  ];
}

/** Strokes are drawn from the bar outwards, the two that bound it longer and thick, with their middles on its ends. */
function bar(stroke: (at: number, length: number) => readonly [Vec2, Vec2], end: number): readonly Mark[] {
  const [from] = stroke(0, 0);
  const [to] = stroke(barLength, 0);
  const inner = Array.from({ length: barLength / 10 - 1 }, (_, index) => (index + 1) * 10);
  return [
    line(pens.bar, from, to),
    ...[0, barLength].map((at) => line(pens.tick, ...stroke(at, end))),
    ...inner.map((at) => line(pens.tick, ...stroke(at, tick))),
  ];
}

/** Where the pictures that say "measure me" stand: over the level bar's start, and under the upright bar. mm of the sheet. */
export function measurePlaces(window: Box): { readonly level: Box; readonly upright: Box } {
  const { level, upright } = barStarts(window);
  const size = 8;
  return {
    level: { x: level[0] + 12, y: level[1] - endTick - 8.4, width: size, height: size },
    upright: { x: upright[0] - (leftBand - off) + 0.3, y: upright[1] + barLength + 2, width: leftBand - off - 0.3, height: leftBand - off - 0.3 },
  };
}
