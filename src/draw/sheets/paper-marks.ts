import type { Vec2 } from '../../model/index.ts';
import { area, circle, line } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** How far a register mark's cross and its filled quarters reach from its middle, mm. */
const registerReach = 4;
const quarterRadius = 2;
const quarterSteps = 6;

/** A cross with two black quarters: the same spot of the drawing on two sheets. A pin's hole has none, so the two are told apart. */
export function registerMark([x, y]: Vec2): readonly Mark[] {
  const reach = registerReach;
  return [
    line(pens.register, [x - reach, y], [x + reach, y]),
    line(pens.register, [x, y - reach], [x, y + reach]),
    area('ink', quarter([x, y], 0), quarter([x, y], Math.PI)),
    circle([x, y], quarterRadius, pens.register),
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
    line(pens.tick, place(-1.6, -0.9 * side), place(2.6, 0.75 * side)),
    circle(place(-2.3, -1.3 * side), 0.8, pens.tick),
  ]);
}
