import type { Vec2 } from '../../../model/index.ts';
import type { Mark } from '../../kit/marks.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import { about as aboutBy, peg, type Frame } from './knots.ts';
import { cutEnd, drawnHome, moves, pull, smooth, stands, thick, type Strand } from './rope.ts';
import { woven } from './woven.ts';

/** These frames are drawn so many times as large as those before. */
const LARGER = 1.2;
const about = (at: Vec2): ((...points: readonly Vec2[]) => readonly Vec2[]) => aboutBy(at, LARGER);
const larger = (strands: readonly Strand[]): readonly Strand[] => strands.map((strand) => thick(strand, LARGER));

const stud = (at: Vec2): readonly Mark[] => peg(about(at)([0, 19])[0] ?? at, 6 * LARGER);

/** The cord from above to the knot of its second loop, and that loop. */
const above = (at: Vec2): Strand => stands(...about(at)([-8, -28], [-8, -12]));
const loop = (at: Vec2): Strand => stands(...smooth(...about(at)([-7, -12], [-1, -16], [7, -16.5], [10.5, -12], [7, -7.5], [-1, -8], [-7, -11])));
const knot = (at: Vec2): readonly Mark[] => drawnHome(about(at)([-8, -11])[0] ?? at, 4.4 * LARGER);

/** The end goes on from the knot, down, round the stud and up. */
const round = (at: Vec2): Strand => stands(...smooth(...about(at)([-8, -8], [-7.6, 8], [-7.3, 19], [-4.6, 25], [0, 26.6], [4.6, 25], [7.3, 19])));
const ROUND_END: Vec2 = [7.3, 19];

/** Round the stud and up. */
export const roundStud: Frame = (at) => {
  const p = about(at);
  const up = moves(...p(ROUND_END, [7.3, 4]));
  return [...stud(at), ...woven(larger([above(at), round(at), up, loop(at)]), []), ...cutEnd(p([7.3, 4])[0] ?? at, [0, -1], LARGER), ...knot(at), ...pull(p([12, 15])[0] ?? at, [0, -1], 12)];
};

/** From the stud up behind the loop, out over its upper edge and down. */
const through = (at: Vec2, ...down: readonly Vec2[]): Strand => moves(...smooth(...about(at)(ROUND_END, [6.6, 8], [3.5, -4], [2.6, -11], [4, -20], [9, -23.5], [14, -20], ...down)));

/** Up through the loop and drawn down: that tightens it. */
export const drawnTight: Frame = (at) => {
  const p = about(at);
  return [
    ...stud(at), ...woven(larger([above(at), round(at), loop(at), through(at, [15.4, -10], [15.4, 6])]), ['u', 'o']), ...cutEnd(p([15.4, 6])[0] ?? at, [0, 1], LARGER), ...knot(at),
    ...pull(p([15.4, 11])[0] ?? at, [0, 1], 10), ...ticked(p([-0.5, 6])[0] ?? at),
  ];
};

/** Nothing is drawn on beyond a wrong end: its frame has so much less room on the right, mm of paper. */
const ASIDE = 2.4;

/** The end drawn down beside the loop, not through it: it slips. */
export const besideLoop: Frame = ([x, y]) => {
  const at: Vec2 = [x - ASIDE, y];
  const p = about(at);
  const past = moves(...smooth(...p(ROUND_END, [7.5, 10], [9, 2], [12, -2], [14.6, 1], [15, 10])));
  return [...stud(at), ...woven(larger([above(at), round(at), loop(at), past]), []), ...cutEnd(p([15, 10])[0] ?? at, [0, 1], LARGER), ...knot(at), ...crossed(p([-0.5, 6])[0] ?? at)];
};
