import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { capHeights } from '../../kit/lettering.ts';
import { circle, figure, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { drawnHome, pull, type Frame } from './knots.ts';
import { cord, smooth } from './rope.ts';

/** The second loop in the cord, over the stud. */
const standing = ([x, y]: Vec2): readonly Mark[] => [...cord([x - 6, y - 22], [x - 6, y - 8]), ...drawnHome([x - 6, y - 7]), ...cord(...smooth([x - 4, y - 6], [x + 1, y - 8], [x + 4, y - 6], [x + 2, y - 3], [x - 4, y - 6]))];

const stud = ([x, y]: Vec2): readonly Mark[] => [circle([x, y + 16], 5, pens.cut, 'panel'), circle([x, y + 16], 2.6, pens.edge, 'core')];

/** The end goes down, round the stud and up to the loop. */
const roundTo = ([x, y]: Vec2, ...up: readonly Vec2[]): readonly Mark[] => cord(...smooth([x - 6, y - 4], [x - 5.8, y + 14], [x - 4, y + 20], [x, y + 22], [x + 4, y + 20], ...up));

/** Round the stud. */
export const roundStud: Frame = (at) => {
  const [x, y] = at;
  return [...stud(at), ...roundTo(at, [x + 5.5, y + 14], [x + 5, y + 2]), ...standing(at), ...pull([x + 11, y + 14], [0, -1], 12)];
};

/** A point inside the loop: the end goes behind its lower cord and over its upper one. */
const inside = ([x, y]: Vec2): Vec2 => [x + 0.5, y - 5.4];

/** Up through the loop and drawn down. */
export const drawnTight: Frame = (at) => {
  const [x, y] = at;
  return [
    ...stud(at), ...roundTo(at, [x + 4, y + 8], inside(at)), ...standing(at), ...cord(...smooth(inside(at), [x + 2.5, y - 9.5], [x + 7, y - 8], [x + 10, y + 1], [x + 11, y + 9])),
    ...pull([x + 14, y], [0, 1], 13),
  ];
};

/** All cords under the loop, the end come down to the hitches. */
const held = (at: Vec2): readonly Mark[] => {
  const [x, y] = at;
  return [...stud(at), ...roundTo(at, [x + 3, y + 10], inside(at)), ...standing(at), ...cord(...smooth(inside(at), [x + 3, y - 9.5], [x + 6, y - 6], [x + 5, y - 1]))];
};

/** A hitch laid loose, one of two: behind all cords, in front of them, and out under itself. */
export const hitchLoose: Frame = (at) => {
  const [x, y] = at;
  return [
    ...cord(...smooth([x + 5, y - 1], [x + 3, y + 1], [x - 4, y + 1.5], [x - 11, y + 2], [x - 12.5, y + 5], [x - 10, y + 7.5])), ...held(at),
    ...cord(...smooth([x - 10, y + 7.5], [x - 3, y + 8.5], [x + 4, y + 6], [x + 8, y + 1.5])), ...cord(...smooth([x + 8, y + 1.5], [x + 9, y - 2], [x + 6.5, y - 3], [x + 5, y - 1])), ...cord([x + 8, y + 1.5], [x + 13, y + 6]),
    figure(tell.times(2), [x + 11, y + 13], capHeights.count, 700),
  ];
};

/** Two hitches drawn home round all cords. */
export const hitchesTight: Frame = (at) => {
  const [x, y] = at;
  const turn = (low: number): readonly Mark[] => cord(...smooth([x + 5.6, low - 1], [x + 4, low + 1], [x - 6, low + 1.6], [x - 7.6, low + 0.6]));
  return [...held(at), ...turn(y), ...turn(y + 2.4), ...cord([x + 5, y + 3], [x + 12, y + 8]), ...pull([x + 12.5, y + 11], [0.6, 0.8], 3)];
};
