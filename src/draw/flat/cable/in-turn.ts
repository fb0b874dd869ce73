import type { BracedFace, Vec2 } from '../../../model/index.ts';
import { arrowhead, line, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import type { Box } from '../../types.ts';
import { bayOf, crossedCords, faceIn, pegsOf, restingCord, workedCord } from './face.ts';
import { pull } from './rope.ts';

/** How long a pull's shaft is, mm of paper, and how bold its arrow: as a hand draws at first, and as hard as it goes. */
const PULLS = { first: { far: 2.6, by: 0.6 }, hard: { far: 1.8, by: 1.1 } } as const;

/** A face with one of its cords being drawn tight: at first by hand, the other not yet there or hanging straight; or both in turn as hard as they go, for one alone draws the frame aslant: common practice, no source. */
export function drawnInTurn(face: BracedFace, { which, has, drawn: how }: { readonly which: 0 | 1; readonly has: readonly (0 | 1)[]; readonly drawn: keyof typeof PULLS }, box: Box): readonly Mark[] {
  const drawn = faceIn(bayOf(face), box);
  const [first] = crossedCords(face);
  if (first === undefined) return drawn.bars;
  const cords = has.map((each) => first.cords[each]);
  const { low, high } = first.cords[which];
  const [from, to]: readonly [Vec2, Vec2] = [drawn.at(low), drawn.at(high)];
  const far = Math.hypot(from[0] - to[0], from[1] - to[1]);
  const along: Vec2 = [(from[0] - to[0]) / far, (from[1] - to[1]) / far];
  return [
    ...drawn.bars, ...cords.flatMap((cord) => (cord === first.cords[which] ? [] : restingCord(drawn.at(cord.low), drawn.at(cord.high)))), ...workedCord(from, to), ...pegsOf(drawn, first.cords),
    ...pull([from[0] + 1.8 * along[0], from[1] + 1.8 * along[1]], along, PULLS[how].far, PULLS[how].by),
  ];
}

/** And then. */
export const andThen = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x - 2.4, y], [x + 0.6, y]), arrowhead([x + 3, y], [1, 0], 3)];
