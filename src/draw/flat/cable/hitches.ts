import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { capHeights } from '../../kit/lettering.ts';
import { circle, figure, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import { about, type Frame } from './knots.ts';
import { boundEnd, drawnHome, drawnStrand, moves, pull, smooth, stands, type Strand } from './rope.ts';
import { woven, type Passes } from './woven.ts';

/** The frames of the hitches are drawn larger by so much than those before: what goes under what is seen. */
const LARGER = 1.25;

const stud = ([x, y]: Vec2, by = 1): readonly Mark[] => [circle([x, y + 19 * by], 6 * by, pens.cut, 'panel'), circle([x, y + 19 * by], 3 * by, pens.edge, 'core')];

/** The cord from above to the knot of its second loop, and that loop. */
const above = (at: Vec2, by = 1): Strand => stands(...about(at, by)([-8, -31], [-8, -12]));
const loop = (at: Vec2, by = 1): Strand => stands(...smooth(...about(at, by)([-7, -12], [-1, -16], [7, -16.5], [10.5, -12], [7, -7.5], [-1, -8], [-7, -11])));
const knot = (at: Vec2, by = 1): readonly Mark[] => drawnHome(about(at, by)([-8, -11])[0] ?? at, 4.4 * by);

/** The end goes on from the knot, down, round the stud and up. */
const round = (at: Vec2, by = 1): Strand => stands(...smooth(...about(at, by)([-8, -8], [-7.6, 8], [-7.3, 19], [-4.6, 25], [0, 26.6], [4.6, 25], [7.3, 19])));
const ROUND_END: Vec2 = [7.3, 19];

/** Round the stud and up. */
export const roundStud: Frame = (at) => {
  const p = about(at);
  const up = moves(...p(ROUND_END, [7.3, 4]));
  return [...stud(at), ...woven([above(at), round(at), up, loop(at)], []), ...boundEnd(p([7.3, 4])[0] ?? at, [0, -1]), ...knot(at), ...pull(p([13, 15])[0] ?? at, [0, -1], 12)];
};

/** From the stud up behind the loop, out over its upper edge and down. */
const through = (at: Vec2, ...down: readonly Vec2[]): Strand => moves(...smooth(...about(at)(ROUND_END, [6.6, 8], [3.5, -4], [2.6, -11], [4, -20], [9, -23.5], [14, -20], ...down)));

/** Up through the loop and drawn down: that tightens it. */
export const drawnTight: Frame = (at) => {
  const p = about(at);
  return [
    ...stud(at), ...woven([above(at), round(at), loop(at), through(at, [15.4, -10], [15.4, 6])], ['u', 'o']), ...boundEnd(p([15.4, 6])[0] ?? at, [0, 1]), ...knot(at),
    ...pull(p([15.4, 11])[0] ?? at, [0, 1], 10), ...ticked(p([-15, 22])[0] ?? at),
  ];
};

/** The end drawn down beside the loop, not through it: it slips. */
export const besideLoop: Frame = (at) => {
  const p = about(at);
  const past = moves(...smooth(...p(ROUND_END, [7.5, 10], [9.5, 2], [13, -2], [16, 1], [16.4, 10])));
  return [...stud(at), ...woven([above(at), round(at), loop(at), past], []), ...boundEnd(p([16.4, 10])[0] ?? at, [0, 1]), ...knot(at), ...crossed(p([-15, 22])[0] ?? at)];
};

/** All cords under the loop, the end over its upper edge and on its way down. */
const held = (at: Vec2): readonly Strand[] => [above(at, LARGER), round(at, LARGER), loop(at, LARGER), stands(...smooth(...about(at, LARGER)(ROUND_END, [6.6, 8], [3.5, -4], [2.6, -11], [4, -20], [9, -22.5], [13, -18], [14, -11])))];

/** A hitch laid loose, one of two: behind all cords, in front of them, and out under itself. */
export const hitchLoose: Frame = (at) => {
  const p = about(at, LARGER);
  const end = moves(...smooth(...p([14, -11], [13.6, -3], [9.6, 4.4], [0, 7], [-10, 7.4], [-14.4, 4.6], [-11, 1], [0, -0.6], [7, -2.6], [13.6, -6.4], [17, -8.7])));
  return [
    ...stud(at, LARGER), ...woven([...held(at), end], HITCH), ...boundEnd(p([17, -8.7])[0] ?? at, [0.83, -0.55]), ...knot(at, LARGER),
    ...pull(p([20, -10.7])[0] ?? at, [0.83, -0.55], 1.5), figure(tell.times(2), p([15.5, 24])[0] ?? at, capHeights.count, 700),
  ];
};

/** The cord and the end on its way up lie behind the hitch's front and before its back; the end passes under its own beginning. */
const HITCH: Passes = ['u', 'o', 'u', 'o', 'o', 'u', 'o'];

/** Two hitches drawn home round all cords; the tail stands out from under the lower one. */
export const hitchesTight: Frame = (at) => {
  const p = about(at, LARGER);
  const turn = (low: number): readonly Mark[] => drawnStrand(moves(...smooth(...p([10.6, low - 1.2], [8, low + 1], [-8, low + 1.6], [-10.6, low + 0.6]))));
  const down = stands(...p([14, -11], [10.4, -1]));
  return [
    ...stud(at, LARGER), ...woven([...held(at), down], ['u', 'o']), ...knot(at, LARGER), ...drawnStrand(moves(...p([5.4, 3], [15, 10]))), ...turn(-0.4), ...turn(3), ...boundEnd(p([15, 10])[0] ?? at, [0.8, 0.6]),
    ...pull(p([17.6, 12])[0] ?? at, [0.8, 0.6], 4), ...ticked(p([16, 24])[0] ?? at),
  ];
};
