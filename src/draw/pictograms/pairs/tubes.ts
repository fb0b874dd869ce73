/** Measuring and cutting a tube. */
import { arrow } from '../arrows.ts';
import { body, box, dashes, stroke, straight, thin, together, type Ink } from '../ink.ts';
import type { Pair } from './pair.ts';

const cut = (end: string): Ink => together(body(`M3 13H${end}H3z`, undefined, 3), stroke(dashes(55, 3, 55, 46, 3, 5), thin));

/** The end stands square to the tube. */
export const cutSquare: Pair = {
  right: cut('50V36'),
  wrong: cut('50L36 36'),
};

const marks = [22, 41, 60];

const tubeWithMarks = together(body(box(3, 33, 66, 11)), stroke(marks.map((x) => straight(x, 33, x, 44)).join(''), 3));
const size = { shaft: thin, head: 7 };

/** Each mark is measured from the same end, not from the mark before. */
export const mark: Pair = {
  right: together(
    stroke(straight(3, 2.5, 3, 33), 3),
    ...marks.map((x, i) => arrow(3, 26 - i * 9, x, 26 - i * 9, size)),
    tubeWithMarks,
  ),
  wrong: together(
    arrow(3, 26, 22, 26, size), arrow(22, 17, 41, 17, size), arrow(41, 8, 60, 8, size),
    stroke(`${straight(22, 14, 22, 33)}${straight(41, 5, 41, 33)}`, thin),
    tubeWithMarks,
  ),
};

const fibres = 'M48 12L60 6M49 19L67 17M49 25L58 26M49 31L68 34M48 37L60 43';

/** No fibre stands out of the end, its edges are broken. */
export const endSmooth: Pair = {
  right: body('M3 8H59L65 14V34L59 40H3z', undefined, 3),
  wrong: together(stroke(fibres, thin), body('M3 8H49V40H3z', undefined, 3)),
};
