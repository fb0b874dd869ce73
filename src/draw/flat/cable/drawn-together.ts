import type { BracedFace, Vec2 } from '../../../model/index.ts';
import { arrowhead, line, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import type { Box } from '../../types.ts';
import { bayOf, crossedCords, faceIn, pegsOf, restingCord, workedCord } from './face.ts';
import { pull } from './rope.ts';

/** How long a pull's shaft is, mm of paper, and how bold its arrow: as a hand draws at first, and as hard as it goes. */
const PULLS = { first: { far: 2.6, by: 0.6 }, hard: { far: 1.8, by: 1.1 } } as const;

/** Which cords of a face hang there, which of them are drawn, and how. */
export interface DrawnCords {
  readonly has: readonly (0 | 1)[];
  readonly pulls: readonly (0 | 1)[];
  readonly how: keyof typeof PULLS;
}

/** A face with its cords being drawn: at first by hand, one after the other; then both together as hard as they go, a person at each, for one alone draws the frame aslant: common practice, no source. */
export function drawnCords(face: BracedFace, { has, pulls, how }: DrawnCords, box: Box): readonly Mark[] {
  const drawn = faceIn(bayOf(face), box);
  const [first] = crossedCords(face);
  if (first === undefined) return drawn.bars;
  const ends = (which: 0 | 1): readonly [Vec2, Vec2] => [drawn.at(first.cords[which].low), drawn.at(first.cords[which].high)];
  return [
    ...drawn.bars, ...has.filter((each) => !pulls.includes(each)).flatMap((each) => restingCord(...ends(each))), ...pulls.flatMap((each) => workedCord(...ends(each))), ...pegsOf(drawn, first.cords),
    ...pulls.flatMap((each) => pulledEnd(ends(each), how)),
  ];
}

/** The arrow of a pull past a cord's lower end. */
function pulledEnd([from, to]: readonly [Vec2, Vec2], how: DrawnCords['how']): readonly Mark[] {
  const far = Math.hypot(from[0] - to[0], from[1] - to[1]);
  const along: Vec2 = [(from[0] - to[0]) / far, (from[1] - to[1]) / far];
  return pull([from[0] + 1.8 * along[0], from[1] + 1.8 * along[1]], along, PULLS[how].far, PULLS[how].by);
}

/** And then. */
export const andThen = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x - 2.4, y], [x + 0.6, y]), arrowhead([x + 3, y], [1, 0], 3)];
