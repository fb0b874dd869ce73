import type { Vec2 } from '../../model/index.ts';
import { arrowhead, circle, line, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';
import { pinch } from './cable/pinch.ts';

/** Room of the picture, and the middle of the stud's head in it, mm of paper. */
export const STUD_FIXED = { width: 46, height: 26, head: [12.4, 12.6] } as const;
/** The head and the neck behind it, and the arrow that goes round them, mm of paper. */
const HEAD = 5;
const NECK = 2.6;
const ROUND = HEAD + 2.6;
/** The ring that forbids, with its bar down to the right (ISO 3864-1, from memory), in black: its radius, its middle beside the head's, its width and the white round its bar, mm of paper. */
const FORBIDS = { radius: 11.4, aside: 1.4, wide: 1.7, white: 3.1 } as const;
/** From where to where the arrow goes, rad, and its bends. */
const ARC = { from: 0.62 * Math.PI, to: 1.38 * Math.PI, bends: 12 } as const;

/** A stud's head from before, larger than it is: thumb and forefinger try to turn it, one way and the other; in a ring with a bar, which forbids it, unlike a cross, by which work is tried: it is of one piece with its joint. From the picture's upper left corner. */
export function studFixed([left, top]: Vec2): readonly Mark[] {
  const [x, y]: Vec2 = [left + STUD_FIXED.head[0], top + STUD_FIXED.head[1]];
  const hand = pinch([x + HEAD - 1, y], 0.8);
  const on = (angle: number): Vec2 => [x + ROUND * Math.cos(angle), y + ROUND * Math.sin(angle)];
  const ends = [ARC.from, ARC.to].map((angle, index): Mark => {
    const way = index === 0 ? -1 : 1;
    return arrowhead(on(angle + way * 0.2), [-Math.sin(angle) * way, Math.cos(angle) * way], 3.8, 3.2);
  });
  return [
    ...hand.behind, circle([x, y], HEAD, pens.cut, 'white'), circle([x, y], NECK, pens.edge, null), ...hand.before,
    line(band(1.2), ...Array.from({ length: ARC.bends + 1 }, (_, step) => on(ARC.from + ((ARC.to - ARC.from) * step) / ARC.bends))), ...ends,
    ...forbidden([x + FORBIDS.aside, y]),
  ];
}

function forbidden([x, y]: Vec2): readonly Mark[] {
  const { radius, wide, white } = FORBIDS;
  const half = radius * Math.SQRT1_2;
  const bar: readonly Vec2[] = [[x - half, y - half], [x + half, y + half]];
  return [
    line({ ...pens.motion, width: white, colour: 'white' }, ...bar), line({ ...pens.motion, width: wide }, ...bar), circle([x, y], radius, { ...pens.motion, width: wide }, null),
  ];
}
