import type { BracedFace, FaceCord, Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { atMost, atMostWidth, moreThan } from '../../kit/at-most.ts';
import { cornersOf } from '../../kit/geometry.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, line, outline, ringedNumeral, type Mark } from '../../kit/marks.ts';
import { pens, type Pen } from '../../kit/pens.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import type { Box } from '../../types.ts';
import { BOTTLE, bottleHung, bottleSize, LYING, roundCord, STANDING } from './bottle.ts';
import { barBelow, bayOf, crossedCords, faceIn, pegsOf, restingCord, workedCord, type Crossed, type FaceDrawn } from './face.ts';
import { FRAMES } from './frames.ts';
import { drawnStrand, gapUnder, moves, stands, thick, wideOf } from './rope.ts';

const cap = capHeights.step;

/** What is hung on each cord, kg, and how far the cord may give way, mm. */
export interface Test {
  readonly mass: number;
  readonly most: number;
}

/** Where a cord was before it was laden: faint dashes. */
const before: Pen = { ...pens.motion, type: 'dashed', width: 0.35 };

/** How far a laden cord gives way in a face, much more than it does: mm of paper, or where the bottle lies a share of how high the crossing is over what is below. Least length of a bottle in it and the ring round its place, mm of paper. */
const SAG = { stands: 4, lies: 0.16 } as const;
const LEAST = 9;
const RING = 5;
/** A bottle on its string hangs free of what is below from this height of the crossing over it on, else it is hung lying, mm. */
const FREE = BOTTLE.long + 110;

/** Whether the bottle lies in its string, for it would stand on the floor or lean on a bar. */
export function doesLie(face: BracedFace): boolean {
  const [first] = crossedCords(face);
  return first !== undefined && first.at[1] - barBelow(face, first.at) < FREE;
}

/** Litre and half litre, kg. */
const MASSES = { large: 1, small: 0.5 } as const;
/** Room round a bottle that lies: over it for its sling, and beside it, mm. */
const ROUND = { sling: 40, ends: 10 } as const;

/** The mass that is hung on the cords of a face, kg: a bottle of a litre, or of half a litre where that would lean on a bar below or on the posts. */
export function massHung(face: BracedFace): number {
  const [first] = crossedCords(face);
  if (first === undefined || !doesLie(face)) return MASSES.large;
  const { long, wide } = bottleSize(MASSES.large);
  // Between the posts, whose pegs the cords are on.
  const thick = Math.max(0, ...face.bars.map(({ outside }) => outside));
  const across = first.cords.map(({ low, high }) => (Math.abs(high[0] - low[0]) - thick - long) / 2);
  const isRoomy = first.at[1] - barBelow(face, first.at) > wide + ROUND.sling && across.every((free) => free > ROUND.ends);
  return isRoomy ? MASSES.large : MASSES.small;
}

/** The face with a full bottle hung where its cords cross, by a string round one of them alone; the other, and how this one was before, stay straight. */
export function ladenFace(face: BracedFace, which: 0 | 1, box: Box): readonly Mark[] {
  const drawn = faceIn(bayOf(face), box);
  const [first] = crossedCords(face);
  if (first === undefined) return drawn.bars;
  const [cord, other] = [first.cords[which], first.cords[1 - which] ?? first.cords[which]];
  return [
    ...drawn.bars, ...restingCord(drawn.at(other.low), drawn.at(other.high)), ...laden(drawn, first, cord, { lies: doesLie(face), under: barBelow(face, first.at), bottle: bottleSize(massHung(face)).long }), ...pegsOf(drawn, first.cords),
  ];
}

function laden({ at, scale }: FaceDrawn, { at: crossing }: Crossed, { low, high }: FaceCord, { lies, under, bottle }: { readonly lies: boolean; readonly under: number; readonly bottle: number }): readonly Mark[] {
  const [x, y] = at(crossing);
  const [from, to]: readonly [Vec2, Vec2] = [at(low), at(high)];
  const tip: Vec2 = [x, y + (lies ? SAG.lies * scale * (crossing[1] - under) : SAG.stands)];
  const string = roundCord(tip, 1.9);
  // Before a bar that is too near for it, not above it.
  const isOver = lies && crossing[1] - under > LYING * bottle;
  const room = at([0, isOver ? under : 0])[1] - string.knot[1] - 1;
  const long = Math.min(Math.max(LEAST, scale * bottle), room / (lies ? LYING : STANDING));
  return [
    line(before, from, to), ...string.behind, ...workedCord(from, tip, to), ...string.before, ...bottleHung(string.knot, long, lies),
    circle([x, y + 1.5], RING, pens.detail),
  ];
}

/** The crossing in its ring: the ring's radius, how far the cord may give way and how far it does when it is taut and when it is slack, mm of paper. */
const NEAR = { radius: 18, most: 8, taut: 4.6, slack: 12 } as const;
/** The least and the most slope of a cord that is enlarged. */
const SLOPES = [0.45, 1.1] as const;
/** How far the crossing stands over the ring's middle, and the rule right of it, mm of paper. */
const CROSSING = 6;
const RULE = { right: 7, wide: 3.6, over: 2, long: 19 } as const;

/** What is shown of a crossing: whether its cord is taut, so many times as large as usual. */
export interface ShownSag {
  readonly isTaut: boolean;
  readonly by: number;
}

/** The crossing enlarged, how far the laden cord has come down from where it was: within the limit, or more, so that it is drawn tight again. */
export const sagAtCrossing = (face: BracedFace, test: Test, { isTaut, by }: ShownSag) => ([x, y]: Vec2): readonly Mark[] => {
  const [first] = crossedCords(face);
  const slope = Math.min(SLOPES[1], Math.max(SLOPES[0], first === undefined ? SLOPES[0] : slopeOf(first.cords[0])));
  const rises = first === undefined ? 1 : Math.sign((first.cords[0].high[0] - first.cords[0].low[0]) * (first.cords[0].high[1] - first.cords[0].low[1]));
  const radius = by * NEAR.radius;
  const cross: Vec2 = [x, y - by * CROSSING];
  const tip: Vec2 = [x, cross[1] + by * (isTaut ? NEAR.taut : NEAR.slack)];
  const towards = (side: 1 | -1, up: 1 | -1): Vec2 => onRing([x, y], radius - 0.4, cross, [side, -up * side * rises * slope]);
  const [ends, others] = [[towards(1, 1), towards(-1, 1)], [towards(1, -1), towards(-1, -1)]] as const;
  const [cord, other] = [thick(moves(ends[1], tip, ends[0]), by), thick(stands(...others), by)];
  const string = roundCord(tip, 1.7 * wideOf(cord));
  const rule = x + by * RULE.right;
  const limit = cross[1] + by * NEAR.most;
  const out = x + radius + 2.6;
  const told = tell.mm(test.most);
  return [
    circle([x, y], radius, pens.detail, 'white'),
    ...drawnStrand(other), line(before, ...ends), ...string.behind, gapUnder(cord), ...drawnStrand(cord), ...string.before,
    line({ ...pens.motion, width: 0.7 }, string.knot, [x, y + radius]),
    ...ruler([rule, cross[1]], by), ...[cross[1], limit].map((at) => line(pens.dimension, [rule, at], [out + 1.4, at])),
    line({ ...pens.motion, width: 0.9 }, [rule - 0.8, limit], [rule + by * RULE.wide + 0.8, limit]),
    line(pens.dimension, cross, [rule, cross[1]]), circle(cross, 0.8, null, 'ink'), circle(tip, 0.8, null, 'ink'), line(pens.motion, [tip[0] + 1, tip[1]], [rule - 1.4, tip[1]]), arrowhead([rule, tip[1]], [1, 0], 2.6),
    line(pens.dimension, [out, cross[1]], [out, limit]), arrowhead([out, cross[1]], [0, -1]), arrowhead([out, limit], [0, 1]),
    ...(isTaut ? atMost : moreThan)(told, [out + 2.4 + atMostWidth(told, cap) / 2, (cross[1] + limit) / 2], cap),
    ...(isTaut ? ticked([x - radius + 1, y + radius], 1.4) : again([x - radius + 1, y + radius + 5.5])),
  ];
};

const slopeOf = ({ low, high }: FaceCord): number => Math.abs((high[1] - low[1]) / (high[0] - low[0]));

/** Where a line from a place within a ring leaves it. */
function onRing(middle: Vec2, radius: number, from: Vec2, [dx, dy]: Vec2): Vec2 {
  const [u, v] = [from[0] - middle[0], from[1] - middle[1]];
  const [a, b, c] = [dx * dx + dy * dy, 2 * (u * dx + v * dy), u * u + v * v - radius ** 2];
  const t = (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
  return [from[0] + t * dx, from[1] + t * dy];
}

/** A rule held upright, its nought at the height told, where the cord was; so many times as large as usual. */
function ruler([x, y]: Vec2, by: number): readonly Mark[] {
  const box = cornersOf({ x, y: y - by * RULE.over, width: by * RULE.wide, height: by * RULE.long });
  return [area('white', box), outline(pens.cut, box), ...Array.from({ length: 9 }, (_, index) => y + index * 2 * by).map((at, index) => line(pens.edge, [x, at], [x + by * (index % 4 === 0 ? 2.4 : 1.2), at]))];
}

/** Where it gives way more: its hitches are undone, the last move first, and it is drawn again. */
const again = ([x, y]: Vec2): readonly Mark[] => [
  ...crossed([x, y], 1.2), line(pens.motion, [x + 4.6, y], [x + 7, y]), arrowhead([x + 10, y], [1, 0], 3),
  ...[FRAMES.last, FRAMES.drawn].map((number, place) => ringedNumeral(tell.number(number), [x + 15 + 13 * place, y], capHeights.order, pens.edge)), line(pens.motion, [x + 19.5, y], [x + 21, y]), arrowhead([x + 24, y], [1, 0], 3),
];
