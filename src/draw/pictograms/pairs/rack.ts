/** The finished item seen from its front. */
import { body, bold, dot, solid, stroke, straight, thin, tint, together, type Ink } from '../ink.ts';
import { floor } from '../motifs.ts';
import type { Pair } from './pair.ts';

const posts = `${straight(14, 3, 14, 45)}${straight(58, 3, 58, 45)}`;
/** The height that was marked, pointed out on both posts. */
const deckMarks = solid('M12 28.5L3 23.5V33.5zM60 28.5L69 23.5V33.5z');

/** A deck whose middle line ends at the two heights. */
const deck = (left: number, right: number): Ink => body(`M17 ${left - 4.5}L55 ${right - 4.5}V${right + 4.5}L17 ${left + 4.5}z`, tint);

/** The deck's ends lie on the marks. */
export const deckLevel: Pair = {
  right: together(stroke(posts, 3), deck(24, 24), deckMarks),
  wrong: together(stroke(posts, 3), deck(15, 32), deckMarks),
};

const face = together(stroke(posts, bold), stroke(`${straight(14, 6, 58, 6)}${straight(14, 42, 58, 42)}`, bold));

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
