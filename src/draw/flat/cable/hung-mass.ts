import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { atMost } from '../../kit/at-most.ts';
import { cornersOf } from '../../kit/geometry.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, circle, figure, line, outline, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import type { Frame } from './knots.ts';
import { cord } from './rope.ts';

const cap = capHeights.step;
/** mm of paper: from the straight line to the limit on the ruler, and to where the cord of the picture comes. */
const LIMIT = 15;
const SHOWN = 11.5;
/** From its middle to a stud. */
const HALF = 15;

/** A full bottle hung on the middle of the cord, and a ruler at it: no further down than its mark. */
export const hungMass = ({ mass, most }: { readonly mass: number; readonly most: number }): Frame => ([left, y]) => {
  const x = left + 4;
  const top = y - 20;
  const low = top + SHOWN;
  return [
    line(pens.centre, [x - HALF, top], [x + HALF, top]), ...ruler([x - 9, top]),
    ...cord([x - HALF, top], [x, low], [x + HALF, top]), circle([x - HALF, top], 2.2, pens.cut, 'panel'), circle([x + HALF, top], 2.2, pens.cut, 'panel'),
    line({ ...pens.motion, width: 1 }, [x - 11, top + LIMIT], [x + 5, top + LIMIT]), ...atMost(tell.mm(most), [x - 12, top + LIMIT + 11], cap),
    ...bottle([x, low]), figure(tell.volume(mass), [x + 12, low + 17], cap, 700), figure(tell.mass(mass), [x + 1, low + 31.5], cap, 700),
  ];
};

/** A ruler held upright with its nought at the straight line. */
function ruler([x, top]: Vec2): readonly Mark[] {
  const ring = cornersOf({ x, y: top, width: 5, height: LIMIT + 6 });
  const ticks = Array.from({ length: 7 }, (_, index) => top + (index * LIMIT) / 5);
  return [area('panel', ring), outline(pens.edge, ring), ...ticks.map((at) => line(pens.edge, [x + 2.5, at], [x + 5, at]))];
}

/** A bottle full of water on a string. */
function bottle([x, y]: Vec2): readonly Mark[] {
  const neck = cornersOf({ x: x - 1.6, y: y + 5, width: 3.2, height: 2.4 });
  const ring: readonly Vec2[] = [[x - 1.4, y + 7.4], [x + 1.4, y + 7.4], [x + 1.4, y + 10], [x + 4.6, y + 14], [x + 4.6, y + 27], [x - 4.6, y + 27], [x - 4.6, y + 14], [x - 1.4, y + 10]];
  return [line(pens.motion, [x, y], [x, y + 6]), area('white', ring), area('panel', [[x - 1.4, y + 10], [x + 1.4, y + 10], [x + 4.6, y + 14], [x + 4.6, y + 27], [x - 4.6, y + 27], [x - 4.6, y + 14]]), outline(pens.cut, ring), area('ink', neck)];
}
