/** The finished item seen from its front. */
import { black, body, bold, box, dot, stroke, straight, thin, tint, together, type Ink } from '../ink.ts';
import { floor } from '../motifs.ts';
import type { Pair } from './pair.ts';

/** Two posts, each with the line that was marked round it. */
const posts = together(...[12, 60].flatMap((x) => [body(box(x - 4, 2.5, 8, 43)), stroke(straight(x - 10, 34, x + 10, 34), 3)]));

/** A bar between two joints whose lower rims are at the two heights. */
const bar = (left: number, right: number): Ink => together(
  body(`M18 ${left - 10}L54 ${right - 10}V${right - 4}L18 ${left - 4}z`, black),
  ...[{ x: 12, y: left }, { x: 60, y: right }].map(({ x, y }) => body(box(x - 7, y - 14, 14, 14), tint, 3)),
);

/** Both joints sit on the lines. */
export const deckLevel: Pair = {
  right: together(posts, bar(31, 31)),
  wrong: together(posts, bar(19, 44)),
};

const face = together(stroke(`${straight(14, 3, 14, 45)}${straight(58, 3, 58, 45)}`, bold), stroke(`${straight(14, 6, 58, 6)}${straight(14, 42, 58, 42)}`, bold));

/** The cables are straight. */
export const cableTight: Pair = {
  right: together(face, stroke('M14 6L58 42M58 6L14 42', thin)),
  wrong: together(face, stroke('M14 6C20 26 36 40 58 42M58 6C52 26 36 40 14 42', thin)),
};

const upright = (lean: number): Ink => together(
  floor(3, 69, 45),
  stroke([22, 46].map((x) => straight(x, 45, x + lean, 4)).join(''), bold),
  stroke([10, 24, 38].map((y) => straight(22 + (lean * (45 - y)) / 41, y, 46 + (lean * (45 - y)) / 41, y)).join(''), 4),
);

/** The posts stand plumb: along the line with the weight. */
export const rackUpright: Pair = {
  right: together(upright(0), stroke(straight(10, 4, 10, 36), thin), dot(10, 37, 4)),
  wrong: together(upright(12), stroke(straight(10, 4, 10, 36), thin), dot(10, 37, 4)),
};
