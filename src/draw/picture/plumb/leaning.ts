import type { Vec2, Vec3 } from '../../../model/index.ts';
import type { Plumb, PlumbSide } from '../../../scene/index.ts';
import type { Box } from '../../types.ts';
import { handPushing, PALM_HIGH } from '../../flat/hands.ts';
import { BOB, OVER, plumbLine, STRAIGHTEDGE, straightedge } from '../../flat/plumb-line.ts';
import { onPaper, type Fit } from '../../kit/fit.ts';
import { arrowhead, line, type Mark } from '../../kit/marks.ts';
import { band, haloOf, pens } from '../../kit/pens.ts';
import type { LineDrawer } from '../line-drawer.ts';
import { between } from './beside-leg.ts';
import { elevationMarks, elevationOf, leant, onPlane, reachAt } from '../elevation.ts';

/** From the leg to the string, and how far the top leans from there, mm of paper: more than it is, so that it is seen. */
const APART = 8;
const LEANS = 5.6;
/** The straightedge over the top, and the floor's line under the feet, mm of paper. */
const OVER_TOP = STRAIGHTEDGE.high + 1;
const UNDER_FLOOR = 1;
/** The hand pushes as high up as the work still reaches so far of its depth, at one of these shares of the height, where its string is on that side no higher than the last share; an arrow so long so far under it, mm of paper. */
const PUSHED = { heights: [0.85, 0.75, 0.65, 0.55, 0.45, 0.35], reaches: 0.6, underString: 0.65 } as const;
const ARROW = { under: 9, long: 11 } as const;
/** The weight is so much smaller than usual; over it the string is measured so far up, mm of paper. */
const SMALL = { high: STRAIGHTEDGE.high, size: 0.7, colour: 'ink' } as const;
const OVER_WEIGHT = 1.6;
/** Cords end so far before or behind the leg's axis at most where they are on the side that is looked at, mm. */
const NEAR = 120;

/** What is shown of work that is looked at from one side. */
export interface Shown {
  /** Upright; or its top leans away from the string, or towards it. */
  readonly leans: 'upright' | 'away' | 'towards';
  /** A hand at it: pushed, or held still. */
  readonly hand: 'pushes' | 'holds' | null;
  readonly cords: boolean;
}

/** The work's room beside the string and a hand, on a paper so wide. */
const WHITE = 1.5;

/** Whether cords are tied on the side that is looked at. */
export const hasCords = (plumb: Plumb, side: PlumbSide): boolean => cordsOn(plumb, side).length > 0;

function cordsOn({ held, leg }: Plumb, { view: { towardsEye } }: PlumbSide): readonly (readonly [Vec3, Vec3])[] {
  const depth = ([x, y, z]: Vec3): number => (x - leg.at[0]) * towardsEye[0] + (y - leg.at[1]) * towardsEye[1] + (z - leg.at[2]) * towardsEye[2];
  return held.cords.filter((ends) => ends.every((end) => Math.abs(depth(end)) < NEAR));
}

/** Cords on paper. Where the work leans, those that have grown longer are tinted, and an arrow past their lower ends draws them tighter; one along the lower end of the others lets these go. */
function cordMarks(cords: readonly (readonly [Vec2, Vec2])[], leans: boolean): readonly Mark[] {
  const lengths = cords.map(([[ax, ay], [bx, by]]) => Math.hypot(bx - ax, by - ay));
  const middle = (Math.min(...lengths) + Math.max(...lengths)) / 2;
  return cords.flatMap((ends, index): readonly Mark[] => {
    const isLong = leans && (lengths[index] ?? 0) > middle + 1e-6;
    const low = ends[0][1] > ends[1][1] ? ends : ([ends[1], ends[0]] as const);
    return [...(isLong
      ? [line(haloOf(2.2), ...ends), line({ ...pens.motion, width: 2.2 }, ...ends), line({ ...pens.motion, width: 1.2, colour: 'fresh' }, ...ends)]
      : [line(haloOf(0.9), ...ends), line({ ...pens.motion, width: 0.9 }, ...ends)]), ...(leans ? workedAt(low, isLong) : [])];
  });
}

/** An arrow beside a cord's lower end: along it and out where it is drawn tighter, in where it is let go; mm of paper. */
function workedAt([low, high]: readonly [Vec2, Vec2], isTighter: boolean): readonly Mark[] {
  const far = Math.hypot(low[0] - high[0], low[1] - high[1]);
  const [dx, dy]: Vec2 = [(low[0] - high[0]) / far, (low[1] - high[1]) / far];
  const on = (along: number): Vec2 => [low[0] + along * dx, low[1] + along * dy];
  return isTighter
    ? [line(band(1), on(1.4), on(4)), arrowhead(on(7.4), [dx, dy], 4, 3.4)]
    : [line(band(1), on(6.4), on(4)), arrowhead(on(1), [-dx, -dy], 4, 3.4)];
}

/** The work's width over its height as it is seen from a side. */
export function aspectFrom({ bodies, floor }: Plumb, { view }: PlumbSide, draw: LineDrawer): number {
  const { drawing: { bounds: { min, max } } } = elevationOf(bodies, view, draw);
  return (max[0] - min[0]) / (max[1] - floor);
}

/** Width of what stands beside the work: a hand, the string, and how far it leans, mm of paper. */
const BESIDE = ARROW.long + WHITE + APART + OVER + LEANS;

/** The same where it leans towards the string and is pushed from there. */
const BESIDE_TOWARDS = WHITE + LEANS + ARROW.long + WHITE;

/** How high the work is on a paper so wide, with the straightedge or the hand over it and the floor, mm of paper. */
export function heightOn(width: number, aspect: number): number {
  const high = (width - BESIDE) / aspect;
  const overTop = PALM_HIGH - (1 - Math.max(...PUSHED.heights)) * high;
  return high + Math.max(OVER_TOP, overTop) + UNDER_FLOOR;
}

/** The work from one side, as large as its room lets it, the plumb line beside its leg. */
export function leaning(plumb: Plumb, side: PlumbSide, shown: Shown, box: Box, draw: LineDrawer): readonly Mark[] {
  const isTowards = shown.leans === 'towards';
  const upright = elevationOf(plumb.bodies, side.view, draw);
  const { min, max } = upright.drawing.bounds;
  const way = Math.sign(onPlane(upright, side.out)[0]);
  const scale = Math.min((box.height - OVER_TOP - UNDER_FLOOR) / (max[1] - plumb.floor), (box.width - (isTowards ? BESIDE_TOWARDS : BESIDE)) / (max[0] - min[0]));
  const lean = shown.leans === 'upright' ? 0 : ((isTowards ? way : -way) * LEANS) / scale / (plumb.top - plumb.floor);
  const drawn = leant(upright, plumb.floor, lean);
  const width = (max[0] - min[0]) * scale + (isTowards ? BESIDE_TOWARDS : BESIDE);
  const [behind, beyond] = isTowards ? [WHITE, LEANS + ARROW.long + WHITE] : [ARROW.long + WHITE + LEANS, APART + OVER];
  const left = box.x + (box.width - width) / 2 + (way > 0 ? behind : beyond);
  const fit: Fit = { scale, origin: [left - min[0] * scale, box.y + box.height - UNDER_FLOOR + plumb.floor * scale] };
  const at = ([x, y]: Vec2): Vec2 => onPaper(fit, [x + lean * (y - plumb.floor), y]);
  const axis = onPlane(upright, plumb.leg.at)[0];
  const [topX, top] = at([axis, plumb.top]);
  const floor = onPaper(fit, [0, plumb.floor])[1];
  const string = at([axis + way * side.face, side.upper])[0] + way * APART;
  const heights = PUSHED.heights.filter((share) => !isTowards || share <= PUSHED.underString).map((share) => plumb.floor + share * (plumb.top - plumb.floor));
  /** The side on which the hand is. */
  const hand = isTowards ? way : -way;
  const inward = (height: number): number => -way * (reachAt(upright, height, -way) - axis);
  const height = heights.find((each) => inward(each) >= PUSHED.reaches * Math.max(...heights.map(inward))) ?? plumb.top;
  const tip = Math.max(top + BOB + 2, onPaper(fit, [0, side.low])[1] - 0.8);
  const [handX, handY] = onPaper(fit, [reachAt(drawn, height, hand), height]);
  const measured = [side.upper, side.lower].map((each): readonly Mark[] => {
    const [x, y] = at([axis + way * side.face, each]);
    return between([x, string], Math.min(y, tip - BOB * SMALL.size - OVER_WEIGHT));
  });
  const rail = { ...pens.cut, width: 0.5 };
  return [
    ...elevationMarks(drawn, fit),
    line(rail, onPaper(fit, [min[0], plumb.floor]), [onPaper(fit, [way > 0 ? max[0] : min[0], 0])[0] + way * (APART + OVER), floor], onPaper(fit, [max[0], plumb.floor])),
    ...(shown.cords ? cordMarks(cordsOn(plumb, side).map((ends) => ends.map((end) => at(onPlane(upright, end))) as [Vec2, Vec2]), shown.leans !== 'upright') : []),
    ...straightedge([topX - way * 9, string + way * OVER], top), ...plumbLine(string, top, tip, SMALL),
    ...measured.flat(),
    ...(shown.hand === null ? [] : handPushing([handX, handY], -hand, shown.hand === 'holds' ? 2 : 1)),
    ...(shown.hand === 'pushes' ? [line(band(1.6), [handX + hand * ARROW.long, handY + ARROW.under], [handX + hand * 5, handY + ARROW.under]), arrowhead([handX + hand * 0.6, handY + ARROW.under], [-hand, 0], 5.2, 4.6)] : []),
  ];
}
