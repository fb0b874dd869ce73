import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { capHeights } from '../kit/lettering.ts';
import { arrowhead, line, ringedNumeral, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** A short arrow to the right from a place. */
export const onwards = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x, y], [x + 3, y]), arrowhead([x + 7, y], [1, 0], 4)];

/** The numbers of what is done one after the other, each at its place, from `first` on. */
export const numbered = (places: readonly Vec2[], first = 1): readonly Mark[] => places.map((place, index) => ringedNumeral(tell.number(first + index), place, capHeights.order, pens.edge));
