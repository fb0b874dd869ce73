import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { apart, boxRound, minus, plus, unit } from '../kit/geometry.ts';
import type { Place } from './placement.ts';
import { capHeight, haloWidth, ink, leaderDot, lengthLine, orderRing, white } from './sizes.ts';
import { circle, line, lineStyle, num } from './svg.ts';
import { bareText, textAt, textRoom, textWidth } from './text.ts';

const directions = 24;
/** Free distance from the place to the nearest side of the box, in mm; never so far that the leader loses the reader. */
const labelDistances = [4, 5.5, 7, 9, 11, 14, 17, 21, 26, 32, 40, 50, 65];
const orderDistances = [1.2, 2, 3, 4, 5.5, 7, 9, 11, 14, 17, 21, 26, 32, 40, 50];

/** Places for a text beside `at`, with a leader that ends in a dot on the part. */
export function labelPlaces(at: Vec2, text: string): Place[] {
  const room = textRoom(text);
  return roundabout(at, room.width, room.height, labelDistances).map(({ centre, box, distance }) => {
    const end = middleOfNearestSide(box, at);
    return { box, lines: [{ from: at, to: end }], cost: distance, draw: () => leader(at, end) + textAt(text, centre) };
  });
}

/** Places for a ringed numeral: as close to `at` as it fits, with a line to it. */
export function orderPlaces(at: Vec2, text: string): Place[] {
  const radius = Math.max(textWidth(text) / 2, capHeight / 2) + orderRing.padding;
  const side = 2 * radius + orderRing.stroke;
  return roundabout(at, side, side, orderDistances, true).map(({ centre, box, distance }) => {
    const way = unit(minus(at, centre)) ?? [0, 1];
    const end = plus(centre, way, radius);
    return { box, lines: [{ from: at, to: end }], cost: 2 * distance, draw: () => pointer(at, end) + ringedNumeral(centre, radius, text) };
  });
}

function ringedNumeral(centre: Vec2, radius: number, text: string): string {
  return circle(centre, radius, `fill="${white}" stroke="${ink}" stroke-width="${orderRing.stroke}"`) + bareText(text, centre);
}

/** A thin line that stops short of its place, which is often a small part that a dot would hide. */
function pointer(at: Vec2, end: Vec2): string {
  const near = plus(at, unit(minus(end, at)) ?? [0, 0], Math.min(leaderDot, apart(at, end) / 2));
  return leaderHalo(near, end) + line([near, end], lineStyle(lengthLine.stroke, ink));
}

/** A thin line from the dot on the part to the text, with a white rim so that it reads across other lines. */
function leader(at: Vec2, end: Vec2): string {
  const dotRim = circle(at, leaderDot + haloWidth / 2, `fill="${white}"`);
  return leaderHalo(at, end) + dotRim + line([at, end], lineStyle(lengthLine.stroke, ink)) + circle(at, leaderDot, `fill="${ink}"`);
}

function leaderHalo(from: Vec2, to: Vec2): string {
  return line([from, to], `stroke="${white}" stroke-width="${num(lengthLine.stroke + 2 * haloWidth)}"`);
}

/** Boxes (or discs, when `round`) all round a place, at growing distances. */
function roundabout(at: Vec2, width: number, height: number, distances: readonly number[], round = false): { readonly centre: Vec2; readonly box: Box; readonly distance: number }[] {
  return distances.flatMap((distance) =>
    Array.from({ length: directions }, (_, i) => {
      const angle = (2 * Math.PI * i) / directions;
      const [x, y] = [Math.cos(angle), -Math.sin(angle)];
      const half = round ? width / 2 : (Math.abs(x) * width + Math.abs(y) * height) / 2;
      const centre = plus(at, [x, y], distance + half);
      return { centre, box: boxRound(centre, width, height), distance };
    }),
  );
}

function middleOfNearestSide(box: Box, at: Vec2): Vec2 {
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const middles: Vec2[] = [[box.x, y], [box.x + box.width, y], [x, box.y], [x, box.y + box.height]];
  return middles.reduce((best, middle) => (apart(middle, at) < apart(best, at) ? middle : best));
}
