import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { atMost, atMostWidth } from '../kit/at-most.ts';
import { apart, boxRound, cornersOf, minus, plus, unit } from '../kit/geometry.ts';
import type { Place } from './placement.ts';
import { capHeights, textRoom } from '../kit/lettering.ts';
import { area, circle, figureOnGround, line, ringedNumeral, toldWidth, type Mark } from '../kit/marks.ts';
import { haloOf, haloWidth, pens } from '../kit/pens.ts';
import { tell, type Told } from '../../scene/index.ts';
import { toldText } from '../kit/told-text.ts';
import { leaderDot, orderPadding } from './sizes.ts';

const cap = capHeights.scene;
const directions = 24;
/** Free distance from the place to the nearest side of the box, in mm; never so far that the leader loses the reader. */
const labelDistances = [4, 5.5, 7, 9, 11, 14, 17, 21, 26, 32, 40, 50, 65];
const orderDistances = [1.2, 2, 3, 4, 5.5, 7, 9, 11, 14, 17, 21, 26, 32, 40, 50];

/** Places for a text beside `at`, with a leader that ends in a dot on the part; the cheapest first, made as they are asked for. */
export function* labelPlaces(at: Vec2, told: Told): Generator<Place> {
  const room = labelRoom(told);
  for (const { centre, box, distance } of roundabout(at, room.width, room.height, labelDistances)) {
    const end = middleOfNearestSide(box, at);
    yield { box, lines: [{ from: at, to: end }], cost: distance, draw: () => [...leader(at, end), ...labelAt(told, centre, box)] };
  }
}

/** The sign of a limit is drawn, the font has none. */
function labelRoom(told: Told): { readonly width: number; readonly height: number } {
  if (told.as !== 'at-most') return textRoom(toldText(told), cap);
  const { width, height } = textRoom(toldText(tell.mm(told.mm)), cap);
  return { width: width + atMostWidth(tell.mm(told.mm), cap) - toldWidth(tell.mm(told.mm), cap, 700), height };
}

const labelAt = (told: Told, centre: Vec2, box: Box): readonly Mark[] =>
  (told.as === 'at-most' ? [area('white', cornersOf(box)), ...atMost(tell.mm(told.mm), centre, cap)] : [figureOnGround(told, centre, cap)]);

/** Places for a ringed numeral: as close to `at` as it fits, with a line to it. As `labelPlaces`. */
export function* orderPlaces(at: Vec2, told: Told): Generator<Place> {
  const radius = Math.max(toldWidth(told, cap, 700) / 2, cap / 2) + orderPadding;
  const side = 2 * radius + pens.numeral.width;
  for (const { centre, box, distance } of roundabout(at, side, side, orderDistances, true)) {
    const way = unit(minus(at, centre)) ?? [0, 1];
    const end = plus(centre, way, radius);
    yield { box, lines: [{ from: at, to: end }], cost: 2 * distance, draw: () => [...pointer(at, end), ringedNumeral(told, centre, cap, pens.numeral, radius)] };
  }
}

/** A thin line that stops short of its place, which is often a small part that a dot would hide. */
function pointer(at: Vec2, end: Vec2): readonly Mark[] {
  const near = plus(at, unit(minus(end, at)) ?? [0, 0], Math.min(leaderDot, apart(at, end) / 2));
  return [leaderHalo(near, end), line(pens.leader, near, end)];
}

/** A thin line from the dot on the part to the text, with a white rim so that it reads across other lines. */
const leader = (at: Vec2, end: Vec2): readonly Mark[] =>
  [leaderHalo(at, end), circle(at, leaderDot + haloWidth / 2, null, 'white'), line(pens.leader, at, end), circle(at, leaderDot, null, 'ink')];

const leaderHalo = (from: Vec2, to: Vec2): Mark => line(haloOf(pens.leader.width), from, to);

/** Boxes (or discs, when `round`) all round a place, at growing distances. */
function* roundabout(at: Vec2, width: number, height: number, distances: readonly number[], round = false): Generator<{ readonly centre: Vec2; readonly box: Box; readonly distance: number }> {
  for (const distance of distances) {
    for (const [x, y] of WAYS_ROUND) {
      const half = round ? width / 2 : (Math.abs(x) * width + Math.abs(y) * height) / 2;
      const centre = plus(at, [x, y], distance + half);
      yield { centre, box: boxRound(centre, width, height), distance };
    }
  }
}

/** Unit vectors in all directions, from the right upwards. */
const WAYS_ROUND: readonly Vec2[] = Array.from({ length: directions }, (_, i) => {
  const angle = (2 * Math.PI * i) / directions;
  return [Math.cos(angle), -Math.sin(angle)];
});

function middleOfNearestSide(box: Box, at: Vec2): Vec2 {
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const middles: Vec2[] = [[box.x, y], [box.x + box.width, y], [x, box.y], [x, box.y + box.height]];
  return middles.reduce((best, middle) => (apart(middle, at) < apart(best, at) ? middle : best));
}
