import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, line, outline, ringedNumeral, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed } from '../kit/right-wrong.ts';
import { clipFromAbove, POST, postFromAbove, pulledFromAbove, reachFromAbove, wallFromAbove } from './bracket-from-above.ts';
import { besideOnPaper, fixedBeside, GAP, WALL_BESIDE, type FromBeside } from './fixed-beside.ts';
import { handPushing } from './hands.ts';
import { smooth, thinCord } from './cable/rope.ts';
import type { Bracket, WallShown } from './wall-pieces.ts';

/** Height of the picture, its floor and the middle of what is seen from above, mm of paper. */
export const PULLED_HIGH = 48;
const FLOOR = PULLED_HIGH - 3;
const MIDDLE = 27;
/** From the left edge to the wall from beside, to the wall from above, and to that of each outcome, mm of paper. */
const PLACES = { beside: 6, pulled: 59, outcome: 115 } as const;
/** Between the item and hands that are ready to catch it, mm of paper. */
const READY = 1.6;

/** What is pulled at: of the bracket and its wall, the pull, kg, how many posts; the numbers of the small picture where a post is tied, and where a bracket is screwed on. */
export interface TiedPulled {
  readonly bracket: Bracket;
  readonly wall: WallShown;
  readonly pull: number;
  readonly count: number;
  readonly item: FromBeside;
  readonly tieAt: number;
  readonly screwAt: number;
}

/** While one person's hands are ready before the item, the other draws each tied post straight out: it stays, or it comes out and is tied anew, and where the jaws are broken the bracket is a new one. */
export function tiedAndPulled({ bracket, wall, pull, count, item, tieAt, screwAt }: TiedPulled): readonly Mark[] {
  const number = (place: number, at: Vec2): Mark => ringedNumeral(tell.number(place), at, capHeights.order, pens.edge);
  const { deep, high } = besideOnPaper(item);
  const front = PLACES.beside + WALL_BESIDE.thick + GAP + deep;
  return [
    number(tieAt + 3, [PLACES.pulled, 5]),
    ...fixedBeside(wall, item, [PLACES.beside, FLOOR]), ...handPushing([front + READY + 3.4, FLOOR - 0.8 * high], -1),
    ...pulledFromAbove(bracket, wall, { pull, count, by: 'post' }, [PLACES.pulled, MIDDLE]),
    ...outcome(bracket, wall, 'slack', [PLACES.outcome, MIDDLE - 11]), ...goesOn([PLACES.outcome + 28, MIDDLE - 11]), number(tieAt, [PLACES.outcome + 37, MIDDLE - 11]),
    ...outcome(bracket, wall, 'broken', [PLACES.outcome, MIDDLE + 9]), ...goesOn([PLACES.outcome + 28, MIDDLE + 9]), number(screwAt, [PLACES.outcome + 37, MIDDLE + 9]),
  ];
}

/** And then. */
const goesOn = ([x, y]: Vec2): readonly Mark[] => [line({ ...pens.motion, width: 0.9 }, [x, y], [x + 2, y]), arrowhead([x + 5.4, y], [1, 0], 4.4)];

/** How far a post has come out, mm of paper. */
const OUT = 2 * POST + 1.4;

/** The post has come out of the jaws, its cord slack; or with it a jaw has broken off. */
function outcome(bracket: Bracket, wall: WallShown, what: 'slack' | 'broken', [x, y]: Vec2): readonly Mark[] {
  const jaws: Vec2 = [x + reachFromAbove(bracket), y];
  return [
    ...wallFromAbove(wall, [x, y]), ...clipFromAbove([x, y], reachFromAbove(bracket)), ...(what === 'broken' ? brokenOff(jaws) : slackCord(jaws)),
    ...postFromAbove([jaws[0] + OUT, y]), ...crossed([x + 24.9, y], 1),
  ];
}

/** The cord hangs beside the post, its knot open. */
const slackCord = ([x, y]: Vec2): readonly Mark[] => [-1, 1].flatMap((side) => thinCord(...smooth([x - POST - 2.4, y + side], [x - POST, y + side * (POST + 1.6)], [x, y + side * (POST + 2.8)], [x + POST, y + side * (POST + 3.2)], [x + POST + 4, y + side * (POST + 4.4)])));

/** A jaw broken across: a gap with its edges, the piece aslant. */
function brokenOff([x, y]: Vec2): readonly Mark[] {
  const gap: readonly Vec2[] = [[x - 0.4, y - POST + 0.6], [x - 1.4, y - POST - 2.4], [x + 6, y - POST - 2.4], [x + 6, y - 1]];
  const piece: readonly Vec2[] = [[x + 1.6, y - POST - 3.4], [x + 4.8, y - POST - 1.6], [x + 6, y - POST + 1.4], [x + 4.6, y - POST + 1.8], [x + 3.6, y - POST - 0.4], [x + 1, y - POST - 1.8]];
  return [area('white', gap), line(pens.cut, [x - 0.4, y - POST + 0.6], [x - 1.2, y - POST - 0.4], [x - 0.6, y - POST - 1.6]), area('panel', piece), outline(pens.cut, piece)];
}
