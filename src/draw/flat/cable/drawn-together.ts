import type { BracedFace, Vec2 } from '../../../model/index.ts';
import { arrowhead, line, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import type { Box } from '../../types.ts';
import { handDown, handOnto } from '../hands.ts';
import { PERSON_HIGH, personMarks } from '../person.ts';
import { bayOf, crossedCords, faceIn, pegsOf, restingCord, workedCord } from './face.ts';
import { pull } from './rope.ts';

/** How long a pull's shaft is, mm of paper, and how bold its arrow: as a hand draws at first, and as two people draw together. */
const PULLS = { first: { far: 2.6, by: 0.7 }, together: { far: 2.4, by: 1.2 } } as const;

/** Which cords of a face hang there, which of them are drawn, and how. */
export interface DrawnCords {
  readonly has: readonly (0 | 1)[];
  readonly pulls: readonly (0 | 1)[];
  readonly how: keyof typeof PULLS;
}

/** How large hands are beside it, against their own size; how far over a cord's lower peg the other hand of who draws it is on the post, as a share of its height; how far from the top's ends the hands of who holds the frame are, as a share of its width. */
const HANDS = { size: 0.55, up: 0.42, aside: 0.3 } as const;

/**
 * A face with its cords being drawn: at first by hand, one after the other, while the other person holds the frame with both hands; then both
 * together, a person at each, for one alone draws the frame aslant; how taut they are the trial tells. Who draws has one hand at the cord and the other on the
 * post beside it: common practice, no source.
 */
export function drawnCords(face: BracedFace, { has, pulls, how }: DrawnCords, box: Box): readonly Mark[] {
  const drawn = faceIn(bayOf(face), box);
  const [first] = crossedCords(face);
  if (first === undefined) return drawn.bars;
  const ends = (which: 0 | 1): readonly [Vec2, Vec2] => [drawn.at(first.cords[which].low), drawn.at(first.cords[which].high)];
  return [
    ...drawn.bars, ...has.filter((each) => !pulls.includes(each)).flatMap((each) => restingCord(...ends(each))), ...pulls.flatMap((each) => workedCord(...ends(each))), ...pegsOf(drawn, first.cords),
    ...pulls.flatMap((each, place) => [...drawing(ends(each)), ...pulledEnd(ends(each), how), ...under(ends(each), place === 0 ? 1 : 2, box)]), ...(how === 'first' ? holding(first.cords.flatMap(({ high }) => [drawn.at(high)])) : []),
  ];
}

/** Who draws a cord: one hand round its end, beyond its lower peg, the other against the outside of the post over that. */
function drawing([low, high]: readonly [Vec2, Vec2]): readonly Mark[] {
  const out = Math.sign(low[0] - high[0]);
  return [...handOnto([low[0] + out * 4.6, low[1] - 1.4], [-out, 0], HANDS.size), ...handOnto([low[0] + out * 1.2, low[1] + HANDS.up * (high[1] - low[1])], [-out, 0], HANDS.size)];
}

/** Who draws it, under the side on which that is. */
const under = ([low, high]: readonly [Vec2, Vec2], person: 1 | 2, { x, y, width, height }: Box): readonly Mark[] =>
  personMarks([low[0] < high[0] ? x - ASIDE : x + width + ASIDE, y + height + PERSON_HIGH + 1.5], person);

/** From the room of the face to the middle of who draws beside it, mm of paper. */
const ASIDE = 2.4;

/** Who holds the frame: both hands on its top, between the upper pegs. */
function holding(upper: readonly Vec2[]): readonly Mark[] {
  const [left, right, y] = [Math.min(...upper.map(([x]) => x)), Math.max(...upper.map(([x]) => x)), Math.min(...upper.map(([, up]) => up))];
  return [HANDS.aside, 1 - HANDS.aside].flatMap((share) => handDown([left + share * (right - left), y - 1], HANDS.size));
}

/** The arrow of a pull past a cord's lower end. */
function pulledEnd([from, to]: readonly [Vec2, Vec2], how: DrawnCords['how']): readonly Mark[] {
  const far = Math.hypot(from[0] - to[0], from[1] - to[1]);
  const along: Vec2 = [(from[0] - to[0]) / far, (from[1] - to[1]) / far];
  return pull([from[0] + 1.8 * along[0], from[1] + 1.8 * along[1]], along, PULLS[how].far, PULLS[how].by);
}

/** And then. */
export const andThen = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x - 2.4, y], [x + 0.6, y]), arrowhead([x + 3, y], [1, 0], 3)];
