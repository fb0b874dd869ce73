import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { capHeights } from '../kit/lettering.ts';
import { arrowhead, line, ringedNumeral, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';

/** A short arrow to the right from a place. */
export const onwards = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x, y], [x + 3, y]), arrowhead([x + 7, y], [1, 0], 4)];

/** How firmly something is pressed, by its arrow, mm of paper: its shaft, the length and width of its head. */
export interface Firmness {
  readonly shaft: number;
  readonly long: number;
  readonly wide: number;
}

/** An arrow down from a place to the level of its tip. */
export const pressedDown = ([x, top]: Vec2, tip: number, { shaft, long, wide }: Firmness): readonly Mark[] => [line(band(shaft), [x, top], [x, tip - long + 0.2]), arrowhead([x, tip], [0, 1], long, wide)];

/** The numbers of what is done one after the other, each at its place, from `first` on. */
export const numbered = (places: readonly Vec2[], first = 1): readonly Mark[] => places.map((place, index) => ringedNumeral(tell.number(first + index), place, capHeights.order, pens.edge));
