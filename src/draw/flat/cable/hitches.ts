import type { Vec2 } from '../../../model/index.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import { about, peg, type Frame } from './knots.ts';
import { pinch } from './pinch.ts';
import { cutEnd, drawnHome, moves, pull, smooth, stands, thick, type Strand } from './rope.ts';
import { woven, type Passes } from './woven.ts';

/** These frames are drawn twice as large as those before: so many times as thick are their cords, and so bold their arrows. */
const THICK = 1.8;
const BOLD = 1.2;

/** What holds, from the frame's middle, mm of paper: the knot of the second loop, the lower peg. */
const KNOT: Vec2 = [-6, -26];
const PEG: Vec2 = [0, 26];

/** The loop, and the end's way up behind it and out over its upper edge; from there on the end moves. */
const LOOP: readonly Vec2[] = [[-5, -28], [2, -32.6], [12, -33], [17, -27.5], [12, -22], [2, -21.5], [-5, -25]];
const OUT_OF_LOOP: readonly Vec2[] = [[5.4, -20], [6, -30], [9, -35.6], [14.6, -36]];
const ROUND_PEG: readonly Vec2[] = [[-8.2, 21], [-8.2, 26], [-5.8, 31.8], [0, 34.2], [5.8, 31.8], [8.2, 26], [8.2, 21]];

/** Both standing cords side by side between knot and peg: the one that comes down, and the one that goes up to the loop. */
interface Standing {
  readonly down: readonly Vec2[];
  readonly up: readonly Vec2[];
}

/** Held apart; the first farther from the second, so that an end goes between them; drawn together. */
const APART: Standing = { down: [[-6, -21], [-5, -12], [-5, 8], [-5.6, 14]], up: [[5.6, 14], [5, 8], [5, -8]] };
const WIDE_APART: Standing = { down: [[-6.4, -21], [-9, -12], [-10, 0], [-9.4, 12]], up: [[5.6, 14], [5, 8], [5, -8]] };
const TOGETHER: Standing = { down: [[-6, -21], [-4, -14], [-3.1, -8], [-3.1, 12], [-4.4, 15.4]], up: [[4.4, 15.4], [3.1, 12], [3.1, -8], [4, -14]] };

/** The end from the loop: down on the right, behind both cords to the left; before both to the right; under its own beginning and out. */
const FROM_LOOP: readonly Vec2[] = [[20, -31.4], [22.6, -22], [23.6, -12], [21, -2], [14, 5]];
const BEHIND: readonly Vec2[] = [...FROM_LOOP, [5, 7], [-5, 7], [-13, 6.6], [-19, 5.6]];
const BEFORE: readonly Vec2[] = [...BEHIND.slice(0, -1), [-19, 4], [-20, -1], [-16, -5], [-9, -6], [5, -6], [8.6, -6.2]];
const UNDER: readonly Vec2[] = [...BEFORE, [16, -7], [23.6, -8.6], [30, -10]];

/** The end between both cords, behind one and before it: it holds one alone. */
const ROUND_ONE: readonly Vec2[] = [...FROM_LOOP, [5, 6.6], [0.6, 5], [-1.4, 0.4], [0.6, -4.4], [5, -6], [9, -6.2], [16, -7], [23.6, -8.6], [30, -10]];

/** The first hitch drawn home; the second laid loose under it, and drawn home. */
const HOME: readonly Vec2[] = [[20, -31.4], [22.4, -22], [21, -13.4], [15, -6.4], [8, -2.4], [3.1, -1.4], [-3.1, -1.4], [-7, -2], [-8.8, -4.9], [-7, -7.8], [-3.1, -8.4], [3.1, -8.4], [10, -8.6], [18.6, -9], [25, -9.4]];
const SECOND: readonly Vec2[] = [...HOME, [28.6, -7.4], [30.2, -1.4], [27, 5.6], [20, 10.6], [9, 12], [-3, 12], [-11, 11.8], [-17, 10.4], [-18.4, 7], [-15, 4.2], [-8, 3.6], [3, 3.6], [13, 3.2], [22, 2.4], [32, 0.8], [38, -0.4]];
const BOTH_HOME: readonly Vec2[] = [...HOME, [28.6, -7.4], [30, -2.4], [26, 4], [15, 9], [3.1, 10.8], [-3.1, 10.8], [-7, 10.2], [-8.8, 7.3], [-7, 4.4], [-3.1, 3.8], [3.1, 3.8], [10, 3.6], [21, 3], [30, 1.6], [35.6, 0.6]];

/**
 * What a frame shows, its middle moved so far to the right, mm of paper: what stands, the end's way, whether a hand holds the pull at
 * the loop; and which cord goes over at the crossings, met along the cord down, round the peg, up and through the loop, and then along
 * the end: over and under take turns along the end, else the hitch slips open.
 */
export interface Hitch {
  readonly aside: number;
  readonly standing: Standing;
  readonly end: readonly Vec2[];
  readonly passes: Passes;
  readonly isHeld: boolean;
}

/** The first hitch, move by move; a wrong one round one cord alone; the first drawn home and the second loose under it; both drawn home. */
export const HITCHES = {
  behind: { aside: -1, standing: APART, end: BEHIND, passes: ['o', 'o', 'u', 'o'], isHeld: true },
  before: { aside: -1, standing: APART, end: BEFORE, passes: ['u', 'o', 'o', 'u', 'u', 'o'], isHeld: true },
  under: { aside: -1, standing: APART, end: UNDER, passes: ['u', 'o', 'o', 'u', 'u', 'o', 'o'], isHeld: true },
  one: { aside: -4, standing: WIDE_APART, end: ROUND_ONE, passes: ['o', 'u', 'u', 'o', 'o'], isHeld: false },
  second: { aside: -8, standing: TOGETHER, end: SECOND, passes: ['u', 'o', 'u', 'o', 'o', 'u', 'o', 'u', 'u', 'o', 'o', 'o'], isHeld: false },
  home: { aside: -8, standing: TOGETHER, end: BOTH_HOME, passes: ['u', 'o', 'u', 'o', 'o', 'u', 'o', 'u', 'u', 'o', 'o', 'o'], isHeld: false },
} as const satisfies Readonly<Record<string, Hitch>>;

/** The cords from a frame's middle: from above to the knot; down from it, round the peg, up and out of the loop; the loop; the end. */
export function hitchCords(at: Vec2, { standing, end }: Hitch): readonly Strand[] {
  const p = about(at);
  const held = [...standing.down, ...ROUND_PEG, ...standing.up, ...OUT_OF_LOOP];
  const whole = smooth(...p(...held, ...end));
  const from = Math.round(((held.length - 1) * (whole.length - 1)) / (held.length + end.length - 1));
  return [stands(...p([KNOT[0], -39.5], KNOT)), stands(...whole.slice(0, from + 1)), stands(...smooth(...p(...LOOP))), moves(...whole.slice(from))].map((strand) => thick(strand, THICK));
}

/** Where the hand holds the end at the loop. */
const PINCHED: Vec2 = [17, -30];

/** The cords, what they are tied to, the hand, and the way in which the end is drawn on. */
const hitch = (shown: Hitch): Frame => ([x, y]) => {
  const { aside, end, passes, isHeld } = shown;
  const middle: Vec2 = [x + aside, y];
  const at = (point: Vec2): Vec2 => [middle[0] + point[0], middle[1] + point[1]];
  const [[x0, y0], [x1, y1]] = end.slice(-2) as unknown as readonly [Vec2, Vec2];
  const far = Math.hypot(x1 - x0, y1 - y0);
  const along: Vec2 = [(x1 - x0) / far, (y1 - y0) / far];
  const hand = isHeld ? pinch(at(PINCHED)) : { behind: [], before: [] };
  return [
    ...hand.behind, ...peg(at(PEG), 6), ...woven(hitchCords(middle, shown), passes), ...cutEnd(at([x1, y1]), along, THICK), ...drawnHome(at(KNOT), 6), ...hand.before,
    ...pull(at([x1 + 1.8 * along[0], y1 + 1.8 * along[1]]), along, 3.6, BOLD),
  ];
};

/** The end behind both cords to the left; before both to the right; under its own beginning and out. */
export const endBehind = hitch(HITCHES.behind);
export const endBefore = hitch(HITCHES.before);
export const endUnder = hitch(HITCHES.under);

/** Wrong: round one cord alone. */
export const roundOne: Frame = (at) => [...hitch(HITCHES.one)(at), ...crossed(about(at)([-24, 26])[0] ?? at, 2)];

/** The first drawn home, the second loose under it; both drawn home. */
export const secondHitch = hitch(HITCHES.second);
export const hitchesTight: Frame = (at) => [...hitch(HITCHES.home)(at), ...ticked(about(at)([22, 26])[0] ?? at, 2)];
