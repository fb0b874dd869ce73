import type { Vec2 } from '../../../model/index.ts';
import type { Mark } from '../../kit/marks.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import { about, peg, type Frame } from './knots.ts';
import { cutEnd, drawnHome, moves, pull, smooth, stands, type Strand } from './rope.ts';
import { woven, type Passes } from './woven.ts';

/** The frames of the hitches are drawn larger by so much than those before: what goes under what is seen. */
const LARGER = 1.25;

const stud = (at: Vec2, by = 1): readonly Mark[] => peg(about(at, by)([0, 19])[0] ?? at, 6 * by);

/** The cord from above to the knot of its second loop, and that loop. */
const above = (at: Vec2, by = 1): Strand => stands(...about(at, by)([-8, -28], [-8, -12]));
const loop = (at: Vec2, by = 1): Strand => stands(...smooth(...about(at, by)([-7, -12], [-1, -16], [7, -16.5], [10.5, -12], [7, -7.5], [-1, -8], [-7, -11])));
const knot = (at: Vec2, by = 1): readonly Mark[] => drawnHome(about(at, by)([-8, -11])[0] ?? at, 4.4 * by);

/** The end goes on from the knot, down, round the stud and up. */
const round = (at: Vec2, by = 1): Strand => stands(...smooth(...about(at, by)([-8, -8], [-7.6, 8], [-7.3, 19], [-4.6, 25], [0, 26.6], [4.6, 25], [7.3, 19])));
const ROUND_END: Vec2 = [7.3, 19];

/** Round the stud and up. */
export const roundStud: Frame = (at) => {
  const p = about(at);
  const up = moves(...p(ROUND_END, [7.3, 4]));
  return [...stud(at), ...woven([above(at), round(at), up, loop(at)], []), ...cutEnd(p([7.3, 4])[0] ?? at, [0, -1]), ...knot(at), ...pull(p([12, 15])[0] ?? at, [0, -1], 12)];
};

/** From the stud up behind the loop, out over its upper edge and down. */
const through = (at: Vec2, ...down: readonly Vec2[]): Strand => moves(...smooth(...about(at)(ROUND_END, [6.6, 8], [3.5, -4], [2.6, -11], [4, -20], [9, -23.5], [14, -20], ...down)));

/** Up through the loop and drawn down: that tightens it. */
export const drawnTight: Frame = (at) => {
  const p = about(at);
  return [
    ...stud(at), ...woven([above(at), round(at), loop(at), through(at, [15.4, -10], [15.4, 6])], ['u', 'o']), ...cutEnd(p([15.4, 6])[0] ?? at, [0, 1]), ...knot(at),
    ...pull(p([15.4, 11])[0] ?? at, [0, 1], 10), ...ticked(p([-13, 22])[0] ?? at),
  ];
};

/** The end drawn down beside the loop, not through it: it slips. */
export const besideLoop: Frame = (at) => {
  const p = about(at);
  const past = moves(...smooth(...p(ROUND_END, [7.5, 10], [9.5, 2], [13, -2], [16, 1], [16.4, 10])));
  return [...stud(at), ...woven([above(at), round(at), loop(at), past], []), ...cutEnd(p([16.4, 10])[0] ?? at, [0, 1]), ...knot(at), ...crossed(p([-13, 22])[0] ?? at)];
};

/** All cords under the loop, the end over its upper edge and on its way down. */
const held = (at: Vec2): readonly Strand[] => [above(at, LARGER), round(at, LARGER), loop(at, LARGER), stands(...smooth(...about(at, LARGER)(ROUND_END, [6.6, 8], [3.5, -4], [2.6, -11], [4, -20], [9, -22.5], [13, -18], [14, -11])))];

/** The same with both cords under the loop drawn together by hitches. */
const bound = (at: Vec2): readonly Strand[] => [
  above(at, LARGER), stands(...smooth(...about(at, LARGER)([-8, -8], [-6, -4], [-1.3, 0], [-1.3, 8], [-5.8, 14], [-7.3, 19], [-4.6, 25], [0, 26.6], [4.6, 25], [7.3, 19]))),
  loop(at, LARGER), stands(...smooth(...about(at, LARGER)(ROUND_END, [5.8, 14], [1.3, 8], [1.3, 0], [2.2, -5], [2.6, -11], [4, -20], [9, -22.5], [13, -18], [14, -11]))),
];

/** The first hitch laid loose: from its beginning behind both cords, before them, and out under its own beginning. */
const LOOSE: readonly Vec2[] = [[14, -11], [13.6, -3], [9.6, 4.4], [0, 7], [-10, 7.4], [-14.4, 4.6], [-11, 1], [0, -0.6], [7, -2.6], [13.6, -6.4], [18, -9.4]];
/** The first hitch drawn home; the second laid loose under it, and drawn home. */
const HOME: readonly Vec2[] = [[14, -11], [11.4, -5], [7, 0.6], [1.3, 2.4], [-2.4, 2.4], [-4.6, 1], [-2.4, -0.6], [1.3, -0.8], [8, -1.4], [14, -1.6]];
const SECOND_LOOSE: readonly Vec2[] = [[18, 0.6], [17, 5], [10, 11.4], [0, 12.6], [-9, 12.4], [-12.6, 9.8], [-9, 6.8], [0, 6.2], [9, 6.2], [16, 8.4], [20, 10.6]];
const SECOND_HOME: readonly Vec2[] = [[16.6, 0], [15, 3.2], [8, 6.6], [1.3, 7.6], [-2.4, 7.6], [-4.6, 6.2], [-2.4, 4.6], [1.3, 4.4], [9, 3.8], [15, 5.6], [19, 8]];

/** The cord and the end on its way up lie behind a hitch's front and before its back; the end passes under its own beginning. */
const HITCH: Passes = ['u', 'o', 'u', 'o', 'o', 'u', 'o'];

/** The same of two hitches, one under the other. */
const HITCHES: Passes = ['u', 'o', 'u', 'o', 'u', 'o', 'o', 'u', 'o', 'u', 'o', 'o'];

/** The end comes out on the right: what it is tied to stands so far left of the frame's middle, mm of paper. */
const LEFT = 5;

/** The end's way, and the direction in which it is pulled on. */
function hitch(middle: Vec2, under: (at: Vec2) => readonly Strand[], way: readonly Vec2[], passes: Passes): readonly Mark[] {
  const at: Vec2 = [middle[0] - LEFT, middle[1]];
  const p = about(at, LARGER);
  const end = moves(...smooth(...p(...way)));
  const [[x0, y0], [x1, y1]] = way.slice(-2) as unknown as readonly [Vec2, Vec2];
  const far = Math.hypot(x1 - x0, y1 - y0);
  const along: Vec2 = [(x1 - x0) / far, (y1 - y0) / far];
  return [...stud(at, LARGER), ...woven([...under(at), end], passes), ...cutEnd(p([x1, y1])[0] ?? at, along), ...knot(at, LARGER), ...pull(p([x1 + 2.4 * along[0], y1 + 2.4 * along[1]])[0] ?? at, along, 1)];
}

/** The first hitch, loose. */
export const hitchLoose: Frame = (at) => hitch(at, held, LOOSE, HITCH);

/** The first hitch drawn home, the second loose under it. */
export const secondHitch: Frame = (at) => hitch(at, bound, [...HOME, ...SECOND_LOOSE], HITCHES);

/** Both drawn home: the end stands out from under the lower one's beginning. */
export const hitchesTight: Frame = (at) => [...hitch(at, bound, [...HOME, ...SECOND_HOME], HITCHES), ...ticked(about(at, LARGER)([13, 22])[0] ?? at)];
