import { tell, type Square, type Told } from '../../scene/index.ts';
import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { boundsOf, fitInto, onPaper, type Bounds, type Fit } from '../kit/fit.ts';
import { apart, minus, plus, unit } from '../kit/geometry.ts';
import { atMost, atMostWidth } from '../kit/at-most.ts';
import { capHeights } from '../kit/lettering.ts';
import { arrowhead, circle, figureOnGround, line, ringedNumeral, toldWidth, type Mark } from '../kit/marks.ts';
import { band, haloOf, pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import type { Paper } from '../kit/svg.ts';
import type { Strip } from './compose.ts';
import type { Disc } from './rings.ts';
import { tapeEnd } from './tape-end.ts';
import { elevationMarks, elevationOf, onPlane, reshaped, type Elevation } from './elevation.ts';
import type { LineDrawer } from './line-drawer.ts';

/** The step's own view, and under it the corners that are measured between, have this share of the width; white between what stands side by side, mm of paper. */
const WHOLE = 0.335;
const WHITE = 3;
/** Radius of the rings round the corners at most, and the least height of the step's own view over it, mm of paper. */
const RING = 13.2;
const VIEW = 21;
/** The side seen from over it is so high at most, and at least where there is less room, mm of paper; beside and over it there is room for what pushes at its corners, under it for a sign. */
const HIGH = { most: 44, least: 20 } as const;
const ROOM = { aside: 8.5, over: 6, sign: 12 } as const;
/** A side that is not square is drawn moved aside by so much, mm of paper: more than it is, so that it is seen. */
const ASIDE = 5;
/** The figures stand on their diagonals at this share of them from their upper ends, beside each other and clear of where they cross. */
const FIGURE = 0.26;
/** What pushes at a corner: so long and so far off it, mm of paper. */
const PUSH = { long: 7.6, off: 0.8 } as const;
/** From a frame's lower edge to the middle of its sign. */
const SIGN_UP = 5.5;

type Corners = readonly [Vec2, Vec2, Vec2, Vec2];

const all = <From>([first, second, third, last]: readonly [From, From, From, From], to: (corner: From) => Vec2): Corners => [to(first), to(second), to(third), to(last)];

/**
 * The side that lies on top measured across both ways before it is drilled: in the work, then from over it with both diagonals alike,
 * ticked; and crossed, with one longer than the other, where it is pushed at the longer one's ends and measured again.
 */
export function squareStrip(square: Square, { width, height: most }: Paper, draw: LineDrawer): Strip {
  const over = elevationOf(square.bodies, square.over, draw);
  const corners = all(square.corners, (corner) => onPlane(over, corner));
  const first = width * WHOLE;
  const each = (width - first - 2 * WHITE) / 2;
  const { bounds } = over.drawing;
  const size = minus(bounds.max, bounds.min);
  const along = minus(corners[1], corners[0]);
  const isAcross = Math.abs(along[0]) > Math.abs(along[1]);
  const highest = Math.max(HIGH.least, Math.min(HIGH.most, most - 2 * ROOM.over - ROOM.sign));
  const room: Vec2 = [each - 2 * ROOM.aside - (isAcross ? ASIDE : 0), highest - (isAcross ? 0 : ASIDE)];
  const scale = Math.min(room[0] / size[0], room[1] / size[1]);
  const high = size[1] * scale + (isAcross ? 0 : ASIDE) + 2 * ROOM.over;
  const ringed = Math.min(RING, first / 4 - 0.6);
  const height = Math.max(high + ROOM.sign, VIEW + 2 * ringed + 4);
  const box = (place: number): Box => ({ x: first + WHITE + place * (each + WHITE), y: 0, width: each, height });
  const moved = skewed(corners, ASIDE / scale);
  const right = middleOf(over.drawing.bounds, scale, box(0));
  const [nearest, opposite] = lowestLeft(corners);
  const work = inTheWork(square, { x: 0, y: 0, width: first, height: height - 2 * ringed - 4 }, draw);
  const [hook, read] = [nearest, opposite].map((corner) => work.at[corners.indexOf(corner)] ?? work.at[0]) as [Vec2, Vec2];
  const ring = (isLeft: boolean): Disc => ({ centre: [first * (isLeft ? 0.25 : 0.75), height - ringed - 0.5], radius: ringed });
  const [hooked, end] = [ring(hook[0] <= read[0]), ring(hook[0] > read[0])];
  return {
    height,
    marks: [
      ...work.marks,
      ...rightSide(over, corners, square, right, box(0)),
      ...tapeEnd(over, nearest, opposite, hooked, 'hooked'), ...leaderTo(hooked, { centre: hook, radius: SMALL }),
      ...tapeEnd(over, opposite, nearest, end, 'read'), ...leaderTo(end, { centre: read, radius: SMALL }),
      line(pens.edge, [box(1).x - WHITE / 2, 0], [box(1).x - WHITE / 2, height]),
      ...wrongSide(reshaped(over, moved), all(corners, moved), boundsOf(all([bounds.min, [bounds.min[0], bounds.max[1]], bounds.max, [bounds.max[0], bounds.min[1]]], moved)), scale, box(1)),
    ],
  };
}

/** Places moved along the posts the more the farther they are across, so far (mm) from the first post to the other: a side whose corners are no right angles. */
function skewed([first, second, , last]: Corners, aside: number): (place: Vec2) => Vec2 {
  const along = unit(minus(second, first)) ?? [1, 0];
  const across = minus(last, first);
  const wide = Math.hypot(...across);
  // Its bars stay as long: what moves aside comes nearer.
  const nearer = 1 - Math.sqrt(1 - (aside / wide) ** 2);
  return (place) => {
    const share = dotOf(minus(place, first), across) / wide ** 2;
    return plus(plus(place, along, aside * share), across, -nearer * share);
  };
}

const dotOf = (a: Vec2, b: Vec2): number => a[0] * b[0] + a[1] * b[1];

/** Radius of the ring round a corner that is enlarged elsewhere, mm of paper. */
const SMALL = 2.2;

/** The corner that is lowest at the left, and the one opposite. */
function lowestLeft(corners: Corners): readonly [Vec2, Vec2] {
  const [index = 0] = corners.map((_, each) => each).sort((a, b) => valueOf(corners, a) - valueOf(corners, b));
  return [corners[index] ?? corners[0], corners[(index + 2) % 4] ?? corners[2]];
}

const valueOf = (corners: Corners, index: number): number => (corners[index] ?? corners[0])[0] + (corners[index] ?? corners[0])[1];

/** A ring round a small place, and the line to where it is enlarged. */
function leaderTo(big: Disc, small: Disc): readonly Mark[] {
  const way = unit(minus(small.centre, big.centre)) ?? [1, 0];
  return [circle(small.centre, small.radius, pens.detail), line(pens.leader, plus(big.centre, way, big.radius), plus(small.centre, way, -small.radius))];
}

/** The work as the step shows it, with both diagonals over it, and where its corners are. */
function inTheWork({ bodies, view, corners }: Square, { x, y, width, height }: Box, draw: LineDrawer): { readonly marks: readonly Mark[]; readonly at: Corners } {
  const whole = elevationOf(bodies, view, draw);
  const fit = fitInto(whole.drawing.bounds, { x: x + 1, y: y + 2, width: width - 2, height: height - 4 }, 1, [0.5, 0.5]);
  const at = all(corners, (corner) => onPaper(fit, onPlane(whole, corner)));
  const [first, second, third, last] = at;
  return { at, marks: [...elevationMarks(whole, fit), ...tape(first, third), ...tape(second, last)] };
}

/** Both diagonals alike, and by how much one may be longer. */
function rightSide(over: Elevation, corners: Corners, { diagonal, unequal }: Square, fit: Fit, box: Box): readonly Mark[] {
  const foot: Vec2 = [box.x + box.width / 2, box.y + box.height - SIGN_UP];
  const told = tell.mm(Math.round(diagonal));
  return [
    ...elevationMarks(over, fit), ...measured(all(corners, (corner) => onPaper(fit, corner)), [told, told]),
    ringedNumeral(tell.number(1), plus(foot, [1, 0], -18), capHeights.order), ...ticked(plus(foot, [1, 0], -8)), ...compared(unequal, plus(foot, [1, 0], -1)),
  ];
}

/** Two lengths laid beside each other from one end, the longer one as wide as its figure over the other, mm of paper. */
const COMPARED = { shorter: 9, over: 4, apart: 3.4, beyond: 1 } as const;

/** By how much one of two lengths may be over the other, from their common end. */
function compared(over: number, [x, y]: Vec2): readonly Mark[] {
  const told = tell.mm(over);
  const [upper, lower] = [y - COMPARED.apart / 2, y + COMPARED.apart / 2];
  const [shorter, longer] = [x + COMPARED.shorter, x + COMPARED.shorter + COMPARED.over];
  return [
    line(band(1), [x, upper], [shorter, upper]), line(band(1), [x, lower], [longer, lower]),
    line(pens.leader, [x, upper - COMPARED.beyond], [x, lower + COMPARED.beyond]), ...[shorter, longer].map((end) => line(pens.leader, [end, upper - COMPARED.beyond], [end, lower + COMPARED.beyond])),
    ...atMost(told, [longer + 1.5 + atMostWidth(told, capHeights.step) / 2, y], capHeights.step),
  ];
}

/** One diagonal longer: what is at its ends is pushed together, and both are measured again. */
function wrongSide(over: Elevation, corners: Corners, bounds: Bounds, scale: number, box: Box): readonly Mark[] {
  const fit = middleOf(bounds, scale, box);
  const foot: Vec2 = [box.x + box.width / 2, box.y + box.height - SIGN_UP];
  const places = all(corners, (corner) => onPaper(fit, corner));
  const [one, other] = [apart(corners[0], corners[2]), apart(corners[1], corners[3])];
  const [from, to] = one > other ? [places[0], places[2]] : [places[1], places[3]];
  return [
    ...elevationMarks(over, fit), ...measured(places, [tell.mm(Math.round(one)), tell.mm(Math.round(other))]),
    ...pushed(from, to), ...pushed(to, from),
    ...crossed(plus(foot, [1, 0], -10)), line(band(1.6), plus(foot, [1, 0], -3.5), plus(foot, [1, 0], 1)), arrowhead(plus(foot, [1, 0], 5.4), [1, 0], 5.2, 4.6), ringedNumeral(tell.number(1), plus(foot, [1, 0], 12), capHeights.order),
  ];
}

/** A drawing in the middle of its room over the sign. */
const middleOf = (bounds: Bounds, scale: number, { x, y, width, height }: Box): Fit => {
  const [wide, high] = minus(bounds.max, bounds.min);
  return { scale, origin: [x + (width - wide * scale) / 2 - bounds.min[0] * scale, y + (height - ROOM.sign - high * scale) / 2 + bounds.max[1] * scale] };
};

/** Both diagonals with how long they are: side by side, or one over the other where the side is narrow. */
function measured([first, second, third, last]: Corners, [one, other]: readonly [Told, Told]): readonly Mark[] {
  const [at, beside] = [onDiagonal(first, third, FIGURE), onDiagonal(second, last, FIGURE)];
  const isNarrow = Math.abs(at[0] - beside[0]) < (toldWidth(one, capHeights.scene, 700) + toldWidth(other, capHeights.scene, 700)) / 2 + FIGURES_APART;
  return [
    ...tape(first, third), ...tape(second, last),
    figureOnGround(one, at, capHeights.scene), figureOnGround(other, isNarrow ? onDiagonal(second, last, 1 - FIGURE) : beside, capHeights.scene),
  ];
}

/** White between two figures, mm of paper. */
const FIGURES_APART = 2;

/** A place on a diagonal, so far down from its upper end as a share of it. */
function onDiagonal(from: Vec2, to: Vec2, share: number): Vec2 {
  const [upper, lower] = from[1] < to[1] ? [from, to] : [to, from];
  return plus(upper, minus(lower, upper), share);
}

/** Dots at the places that are measured from and to, mm of paper. */
const END = 1.1;

/** From one corner to the other. */
function tape(from: Vec2, to: Vec2): readonly Mark[] {
  const way = unit(minus(to, from)) ?? [1, 0];
  return [
    line(haloOf(pens.motion.width), from, to), line(pens.motion, from, to),
    arrowhead(from, [-way[0], -way[1]], 3), arrowhead(to, way, 3), ...[from, to].map((end) => circle(end, END, null, 'ink')),
  ];
}

/** Pushed at a corner towards another. */
function pushed(at: Vec2, towards: Vec2): readonly Mark[] {
  const way = unit(minus(towards, at)) ?? [1, 0];
  const tip = plus(at, way, -PUSH.off);
  return [line(band(1.6), plus(tip, way, -PUSH.long), plus(tip, way, -4.4)), arrowhead(tip, way, 5.2, 4.6)];
}
