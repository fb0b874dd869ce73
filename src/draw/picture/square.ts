import { tell, type Square, type Told } from '../../scene/index.ts';
import type { Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { boundsOf, fitInto, onPaper, type Bounds, type Fit } from '../kit/fit.ts';
import { apart, minus, plus, unit } from '../kit/geometry.ts';
import { about, atMost, atMostWidth, moreThan } from '../kit/at-most.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, line, ringedNumeral, type Mark } from '../kit/marks.ts';
import { band, haloOf, pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture } from '../kit/svg.ts';
import type { Disc } from './rings.ts';
import { tapeEnd } from './tape-end.ts';
import { elevationMarks, elevationOf, onPlane, reshaped, type Elevation } from './elevation.ts';
import type { LineDrawer } from './line-drawer.ts';

/** The upper row: the work in the middle, its two corners enlarged left and right of it in rings of this radius, mm of paper. */
const RING = 23;
/** White between what stands side by side or one over the other, mm of paper. */
const WHITE = 4;
/** A side seen from over it is so high and wide at most, mm of paper; room over it and under it for a number, aside of one that is pushed. */
const HIGHEST = 44;
const ROOM = { over: 5, sign: 12, pushed: 9, aside: 2 } as const;
/** A side wider than this for its height, as a share, has two fields in a row, else all stand in one. */
const WIDE = 1.5;
/** Width of the field that compares both lengths, mm of paper. */
const COMPARING = 34;
/** A side that is not square is drawn moved aside by so much, mm of paper: more than it is, so that it is seen. */
const ASIDE = 5;
/** A figure stands on its diagonal at this share of it from its upper end. */
const FIGURE = 0.3;
/** What pushes at a corner: so long and so far off it, mm of paper. */
const PUSH = { long: 7.6, off: 0.8 } as const;
/** From a field's lower edge to the middle of its sign. */
const SIGN_UP = 5.5;

type Corners = readonly [Vec2, Vec2, Vec2, Vec2];

const all = <From>([first, second, third, last]: readonly [From, From, From, From], to: (corner: From) => Vec2): Corners => [to(first), to(second), to(third), to(last)];

/**
 * The side that lies on top measured across both ways before it is drilled, `width` mm of paper wide: in the work, with the
 * tape's two ends enlarged; then from over it one diagonal, about so long, and the other; both compared, ticked where they
 * are alike; and crossed where they are not: there it is pushed at the longer one's ends and measured again.
 */
export const squarePicture = (square: Square, width: number, draw: LineDrawer): DrawnPicture => {
  const { height, marks } = squareMarks(square, width, draw);
  return toPicture({ width, height }, marks);
};

/** The marks of that picture and its height, mm of paper. */
export function squareMarks(square: Square, width: number, draw: LineDrawer): { readonly height: number; readonly marks: readonly Mark[] } {
  const over = elevationOf(square.bodies, square.over, draw);
  const corners = all(square.corners, (corner) => onPlane(over, corner));
  const fields = fieldsOf(over, corners, width);
  const upper = { x: 0, y: 0, width, height: 2 * RING + 2 };
  const [one, other, alike, unlike] = fields.boxes.map((box) => ({ ...box, y: box.y + upper.height + WHITE }));
  if (one === undefined || other === undefined || alike === undefined || unlike === undefined) throw new RangeError('four fields are laid out');
  const { bounds } = over.drawing;
  const moved = skewed(corners, ASIDE / fields.scale);
  const wrong = boundsOf(all([bounds.min, [bounds.min[0], bounds.max[1]], bounds.max, [bounds.max[0], bounds.min[1]]], moved));
  const [hook, read] = lowestLeft(corners);
  const marks = [
    ...inTheWork(square, over, corners, upper, draw),
    ...oneMeasured(over, [hook, read], 1, square.diagonal, fields.scale, one),
    ...oneMeasured(over, others(corners, hook), 2, null, fields.scale, other),
    ...fields.lines.map(([from, to]) => line(pens.edge, plus(from, [0, upper.height + WHITE]), plus(to, [0, upper.height + WHITE]))),
    ...alikeSide(square.unequal, alike),
    ...unlikeSide(reshaped(over, moved), all(corners, moved), wrong, { scale: fields.scale, unequal: square.unequal, box: unlike }),
  ];
  return { height: Math.max(...fields.boxes.map(({ y, height }) => y + height)) + upper.height + WHITE, marks };
}

/** Where the four fields stand under the work, from the upper left, mm of paper; the scale of the sides in them; lines between. */
interface Fields {
  readonly boxes: readonly Box[];
  readonly scale: number;
  readonly lines: readonly (readonly [Vec2, Vec2])[];
}

function fieldsOf({ drawing: { bounds } }: Elevation, corners: Corners, width: number): Fields {
  const [wide, high] = minus(bounds.max, bounds.min);
  const along = minus(corners[1], corners[0]);
  const skew: Vec2 = Math.abs(along[0]) > Math.abs(along[1]) ? [ASIDE, 0] : [0, ASIDE];
  const inRow = (first: number, last: number): number => Math.min((first - 2 * ROOM.aside) / wide, (last - 2 * ROOM.pushed - skew[0]) / wide, HIGHEST / high);
  const heightAt = (scale: number): number => high * scale + 2 * ROOM.over + ROOM.sign;
  if (wide > WIDE * high) {
    const half = (width - WHITE) / 2;
    const scale = inRow(half, width - COMPARING - WHITE);
    const [upper, lower] = [heightAt(scale), heightAt(scale) + skew[1] + ROOM.over];
    const under = upper + WHITE;
    return {
      scale, boxes: [{ x: 0, y: 0, width: half, height: upper }, { x: half + WHITE, y: 0, width: half, height: upper }, { x: 0, y: under, width: COMPARING, height: lower }, { x: COMPARING + WHITE, y: under, width: width - COMPARING - WHITE, height: lower }],
      lines: [[[0, upper + WHITE / 2], [width, upper + WHITE / 2]], [[COMPARING + WHITE / 2, under], [COMPARING + WHITE / 2, under + lower]]],
    };
  }
  const left = width - COMPARING - 3 * WHITE;
  const last = (left - 4 * ROOM.aside + 4 * ROOM.pushed + 2 * skew[0]) / 3;
  const first = (left - last) / 2;
  const scale = inRow(first, last);
  const height = heightAt(scale) + skew[1];
  const [second, comparing, pushed] = [first + WHITE, 2 * (first + WHITE), 2 * (first + WHITE) + COMPARING + WHITE];
  return {
    scale, boxes: [{ x: 0, y: 0, width: first, height }, { x: second, y: 0, width: first, height }, { x: comparing, y: 0, width: COMPARING, height }, { x: pushed, y: 0, width: last, height }],
    lines: [comparing, pushed].map((x) => [[x - WHITE / 2, 0], [x - WHITE / 2, height]]),
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

/** The ends of the other diagonal. */
function others(corners: Corners, hook: Vec2): readonly [Vec2, Vec2] {
  const index = corners.indexOf(hook);
  return [corners[(index + 1) % 4] ?? corners[1], corners[(index + 3) % 4] ?? corners[3]];
}

/** A ring round a small place, and the line to where it is enlarged. */
function leaderTo(big: Disc, small: Disc): readonly Mark[] {
  const way = unit(minus(small.centre, big.centre)) ?? [1, 0];
  return [circle(small.centre, small.radius, pens.detail), line(pens.leader, plus(big.centre, way, big.radius), plus(small.centre, way, -small.radius))];
}

/** The work as the step shows it, with both diagonals over it; left and right of it the corners where a tape is hooked and where it is read. */
function inTheWork({ bodies, view, corners }: Square, over: Elevation, level: Corners, { x, y, width, height }: Box, draw: LineDrawer): readonly Mark[] {
  const whole = elevationOf(bodies, view, draw);
  const aside = 2 * RING + WHITE;
  const fit = fitInto(whole.drawing.bounds, { x: x + aside, y: y + 2, width: width - 2 * aside, height: height - 4 }, 1, [0.5, 0.5]);
  const at = all(corners, (corner) => onPaper(fit, onPlane(whole, corner)));
  const [nearest, opposite] = lowestLeft(level);
  const [hook, read] = [nearest, opposite].map((corner) => at[level.indexOf(corner)] ?? at[0]) as [Vec2, Vec2];
  const ring = (isLeft: boolean): Disc => ({ centre: [isLeft ? x + RING : x + width - RING, y + height / 2], radius: RING - 0.5 });
  const [hooked, end] = [ring(hook[0] <= read[0]), ring(hook[0] > read[0])];
  const [first, second, third, last] = at;
  return [
    ...elevationMarks(whole, fit), ...tape(first, third), ...tape(second, last),
    ...tapeEnd(over, nearest, opposite, hooked, 'hooked'), ...leaderTo(hooked, { centre: hook, radius: SMALL }),
    ...tapeEnd(over, opposite, nearest, end, 'read'), ...leaderTo(end, { centre: read, radius: SMALL }),
  ];
}

/** One diagonal measured, with its number in the order; about how long it is, where that is told. */
function oneMeasured(over: Elevation, [from, to]: readonly [Vec2, Vec2], order: number, long: number | null, scale: number, box: Box): readonly Mark[] {
  const fit = middleOf(over.drawing.bounds, scale, box);
  const ends: readonly [Vec2, Vec2] = [onPaper(fit, from), onPaper(fit, to)];
  return [
    ...elevationMarks(over, fit), ...tape(...ends),
    ...(long === null ? [] : aboutOnGround(tell.mm(Math.round(long)), onDiagonal(...ends, FIGURE))),
    ringedNumeral(tell.number(order), footOf(box), capHeights.order),
  ];
}

function aboutOnGround(told: Told, at: Vec2): readonly Mark[] {
  const cap = capHeights.scene;
  const [wide, high] = [atMostWidth(told, cap) / 2 + 0.8, cap / 2 + 0.8];
  const [x, y] = at;
  return [area('white', [[x - wide, y - high], [x + wide, y - high], [x + wide, y + high], [x - wide, y + high]]), ...about(told, at, cap)];
}

/** The middle of a field's sign. */
const footOf = ({ x, y, width, height }: Box): Vec2 => [x + width / 2, y + height - SIGN_UP];

/** Both lengths alike but for so much, ticked. */
function alikeSide(unequal: number, box: Box): readonly Mark[] {
  return [...compared([box.x + box.width / 2, box.y + (box.height - ROOM.sign) / 2], 1.6, atMost(tell.mm(unequal), [0, 0], capHeights.step)), ...ticked(footOf(box), 1.4)];
}

/** Two lengths laid beside each other from one end: so long, and so far apart, mm of paper. */
const COMPARED = { long: 16, apart: 10, beyond: 2 } as const;

/** Two lengths laid beside each other, by the numbers of their measuring; the second is longer by so much of the paper, and how that is limited stands under where it is. */
function compared([x, y]: Vec2, longer: number, limit: readonly Mark[]): readonly Mark[] {
  const left = x - COMPARED.long / 2 + 3.5;
  const ends = [left + COMPARED.long, left + COMPARED.long + longer];
  const rows = [y - COMPARED.apart, y];
  return [
    ...rows.flatMap((row, index) => [line(band(1.4), [left, row], [ends[index] ?? left, row]), ringedNumeral(tell.number(index + 1), [left - 5.5, row], capHeights.order)]),
    ...ends.map((end) => line(pens.leader, [end, y - COMPARED.apart - COMPARED.beyond], [end, y + COMPARED.beyond])),
    line(pens.leader, [left, y - COMPARED.apart - COMPARED.beyond], [left, y + COMPARED.beyond]),
    { mark: 'placed', marks: limit, at: [(ends[0] ?? x) + longer / 2 - 2, y + 6.5] },
  ];
}

/** One diagonal longer: what is at its ends is pushed together, and both are measured again. */
function unlikeSide(over: Elevation, corners: Corners, bounds: Bounds, { scale, unequal, box }: { readonly scale: number; readonly unequal: number; readonly box: Box }): readonly Mark[] {
  const fit = middleOf(bounds, scale, box);
  const foot = footOf(box);
  const places = all(corners, (corner) => onPaper(fit, corner));
  const isFirst = apart(corners[0], corners[2]) > apart(corners[1], corners[3]);
  const [from, to] = isFirst ? [places[0], places[2]] : [places[1], places[3]];
  const cap = capHeights.step;
  return [
    ...elevationMarks(over, fit), ...tape(places[0], places[2]), ...tape(places[1], places[3]), ...pushed(from, to), ...pushed(to, from),
    ...moreThan(tell.mm(unequal), plus(foot, [-18, 0]), cap), ...crossed(plus(foot, [-8, 0])),
    line(band(1.6), plus(foot, [-2.5, 0]), plus(foot, [2, 0])), arrowhead(plus(foot, [6.4, 0]), [1, 0], 5.2, 4.6), ringedNumeral(tell.number(1), plus(foot, [13, 0]), capHeights.order),
  ];
}

/** A drawing in the middle of its room over the sign. */
const middleOf = (bounds: Bounds, scale: number, { x, y, width, height }: Box): Fit => {
  const [wide, high] = minus(bounds.max, bounds.min);
  return { scale, origin: [x + (width - wide * scale) / 2 - bounds.min[0] * scale, y + (height - ROOM.sign - high * scale) / 2 + bounds.max[1] * scale] };
};

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
