import type { Vec2 } from '../../model/index.ts';
import type { Told } from '../../scene/index.ts';
import { figure, line, toldWidth, type Mark } from './marks.ts';
import { thick, type Pen, pens } from './pens.ts';

/** Room of the sign before its figure, and the white between them, as shares of the cap height. */
const SIGN = { wide: 0.75, gap: 0.45 } as const;

/** Width of a figure with the sign before it, mm. */
export const atMostWidth = (told: Told, cap: number): number => toldWidth(told, cap, 700) + cap * (SIGN.wide + SIGN.gap);

/** A limit: the sign ≤ before a bold figure, centred on a place. The sign is drawn, the font has none. */
export function atMost(told: Told, [x, y]: Vec2, cap: number): readonly Mark[] {
  const left = x - atMostWidth(told, cap) / 2;
  const [right, foot] = [left + cap * SIGN.wide, y + cap / 2];
  const pen: Pen = { ...pens.sign, width: thick * 1.2 };
  return [
    line(pen, [right, foot - cap], [left, foot - 0.64 * cap], [right, foot - 0.28 * cap]), line(pen, [left, foot], [right, foot]),
    figure(told, [left + cap * (SIGN.wide + SIGN.gap) + toldWidth(told, cap, 700) / 2, y], cap, 700),
  ];
}

/** More than a limit: the sign > before a bold figure, centred on a place, as wide and high as `atMost`. */
export const moreThan = (told: Told, at: Vec2, cap: number): readonly Mark[] => beyond(told, at, cap, 'more');

/** Less than a limit: the sign <, likewise. */
export const lessThan = (told: Told, at: Vec2, cap: number): readonly Mark[] => beyond(told, at, cap, 'less');

/** About so much, a measure that is only to compare with another: the sign ≈ before a bold figure, likewise. */
export function about(told: Told, [x, y]: Vec2, cap: number): readonly Mark[] {
  const left = x - atMostWidth(told, cap) / 2;
  const pen: Pen = { ...pens.sign, width: thick * 1.2 };
  const wave = (up: number): Mark => line(pen, ...WAVE.map(([along, over]): Vec2 => [left + along * SIGN.wide * cap, y + (over + up) * cap]));
  return [wave(-0.17), wave(0.17), figure(told, [left + cap * (SIGN.wide + SIGN.gap) + toldWidth(told, cap, 700) / 2, y], cap, 700)];
}

/** A wave as shares of its length, and of the cap height down. */
const WAVE: readonly Vec2[] = Array.from({ length: 9 }, (_, index) => [index / 8, -0.11 * Math.sin((index / 4) * Math.PI)]);

function beyond(told: Told, [x, y]: Vec2, cap: number, is: 'more' | 'less'): readonly Mark[] {
  const left = x - atMostWidth(told, cap) / 2;
  const [open, tip] = is === 'more' ? [left, left + cap * SIGN.wide] : [left + cap * SIGN.wide, left];
  return [
    line({ ...pens.sign, width: thick * 1.2 }, [open, y - 0.42 * cap], [tip, y], [open, y + 0.42 * cap]),
    figure(told, [left + cap * (SIGN.wide + SIGN.gap) + toldWidth(told, cap, 700) / 2, y], cap, 700),
  ];
}
