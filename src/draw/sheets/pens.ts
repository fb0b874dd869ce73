import type { Vec2 } from '../../model/index.ts';
import { area, circle, line } from '../flat/marks.ts';
import type { Mark } from '../flat/marks.ts';
import { faded, ink, thick, thin } from '../flat/pens.ts';
import type { Pen } from '../flat/pens.ts';

/** Lines that belong to the paper, not to the panel. */
export const sheetPens = {
  /** Where the paper is cut before it is laid over the next sheet. */
  trim: { name: 'trim', type: 'continuous', width: thin, colour: faded },
  register: { name: 'register', type: 'continuous', width: thin, colour: ink },
  /** Where a paper strip is folded. */
  paperFold: { name: 'paper-fold', type: 'dashed', width: thin, colour: ink },
  /** Edge of a paper strip. */
  strip: { name: 'strip', type: 'continuous', width: thin, colour: ink },
  bar: { name: 'bar', type: 'continuous', width: thick, colour: ink },
  tick: { name: 'tick', type: 'continuous', width: thin, colour: ink },
  map: { name: 'map', type: 'continuous', width: thin, colour: ink },
} as const satisfies Readonly<Record<string, Pen>>;

/** How far a register mark's cross and its filled quarters reach from its middle, mm. */
const registerReach = 4;
const quarterRadius = 2;
const quarterSteps = 6;

/** A cross with two black quarters: the same spot of the drawing on two sheets. A pin's hole has none, so the two are told apart. */
export function registerMark([x, y]: Vec2): readonly Mark[] {
  const reach = registerReach;
  return [
    line(sheetPens.register, [x - reach, y], [x + reach, y]),
    line(sheetPens.register, [x, y - reach], [x, y + reach]),
    area(ink, quarter([x, y], 0), quarter([x, y], Math.PI)),
    circle([x, y], quarterRadius, sheetPens.register),
  ];
}

function quarter([x, y]: Vec2, from: number): readonly Vec2[] {
  const arc = Array.from({ length: quarterSteps + 1 }, (_, index): Vec2 => {
    const angle = from + (index / quarterSteps) * (Math.PI / 2);
    return [x + quarterRadius * Math.cos(angle), y + quarterRadius * Math.sin(angle)];
  });
  return [[x, y], ...arc];
}

/** Scissors that look along a line, pivot on a point. */
export function scissors([x, y]: Vec2, along: 'down' | 'right'): readonly Mark[] {
  const place = (ahead: number, aside: number): Vec2 => (along === 'down' ? [x + aside, y + ahead] : [x + ahead, y + aside]);
  return [-1, 1].flatMap((side) => [
    line(sheetPens.tick, place(-1.6, -0.9 * side), place(2.6, 0.75 * side)),
    circle(place(-2.3, -1.3 * side), 0.8, sheetPens.tick),
  ]);
}
