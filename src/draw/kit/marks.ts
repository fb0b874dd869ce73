import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import type { Run } from './clip.ts';
import { boxRound } from './geometry.ts';
import type { Colour } from './colours.ts';
import type { Weight } from './lettering.ts';
import { groundBox, textBox, textWidth } from './lettering.ts';
import { pens, type Pen } from './pens.ts';
import { tell, type Told } from '../../scene/index.ts';
import { toldText } from './told-text.ts';

/** What a picture is made of. All places in mm of paper from the upper left corner, y downwards. */
export type Mark =
  | { readonly mark: 'line'; readonly pen: Pen; readonly points: readonly Vec2[]; readonly closed: boolean }
  /** Many lines of one pen that are never dashed. */
  | { readonly mark: 'lines'; readonly pen: Pen; readonly runs: readonly Run[] }
  | { readonly mark: 'area'; readonly fill: Colour; readonly rings: readonly (readonly Vec2[])[] }
  | { readonly mark: 'circle'; readonly centre: Vec2; readonly radius: number; readonly pen: Pen | null; readonly fill: Colour | null }
  | { readonly mark: 'figure'; readonly told: Told; readonly centre: Vec2; readonly cap: number; readonly weight: Weight; readonly turn: number; readonly ground: boolean }
  /** A numeral in a ring: the place in an order. */
  | { readonly mark: 'order'; readonly told: Told; readonly centre: Vec2; readonly cap: number; readonly radius: number; readonly pen: Pen }
  /** A plain fraction, numerator over denominator. */
  | { readonly mark: 'fraction'; readonly numerator: number; readonly denominator: number; readonly centre: Vec2; readonly cap: number; readonly pen: Pen }
  /** Marks drawn to scale; the scale is written into the picture. */
  | { readonly mark: 'view'; readonly name: string; readonly scale: number; readonly marks: readonly Mark[] }
  /** Marks moved off to a place. */
  | { readonly mark: 'placed'; readonly at: Vec2; readonly marks: readonly Mark[] };

export function line(pen: Pen, ...points: readonly Vec2[]): Mark {
  return { mark: 'line', pen, points, closed: false };
}

export function outline(pen: Pen, points: readonly Vec2[]): Mark {
  return { mark: 'line', pen, points, closed: true };
}

export function area(fill: Colour, ...rings: readonly (readonly Vec2[])[]): Mark {
  return { mark: 'area', fill, rings };
}

export function circle(centre: Vec2, radius: number, pen: Pen | null, fill: Colour | null = null): Mark {
  return { mark: 'circle', centre, radius, pen, fill };
}

/** Turn of a figure that is read from the right, degrees clockwise. */
export const upwards = -90;

/** A line of figures centred on a point; turned by degrees clockwise. */
export function figure(told: Told, centre: Vec2, cap: number, weight: Weight = 400, turn = 0): Mark {
  return { mark: 'figure', told, centre, cap, weight, turn, ground: false };
}

/** The same on a white ground, for where lines may run under it. */
export const figureOnGround = (told: Told, centre: Vec2, cap: number, turn = 0): Mark =>
  ({ mark: 'figure', told, centre, cap, weight: 700, turn, ground: true });

/** A numeral in a ring. */
export const ringedNumeral = (told: Told, centre: Vec2, cap: number, pen: Pen = pens.edge, radius = orderRadius(told, cap)): Mark =>
  ({ mark: 'order', told, centre, cap, radius, pen });

/** Width of a figure in mm. */
export const toldWidth = (told: Told, cap: number, weight: Weight): number => textWidth(toldText(told), cap, weight);

/** Radius of the ring round an order numeral of a given cap height, in mm. */
export function orderRadius(told: Told, cap: number): number {
  return Math.max(cap * 0.95, toldWidth(told, cap, 700) * 0.72);
}

/** Height and width of a stacked fraction whose numerals have the given cap height, in mm. */
export function fractionSize(numerator: number, denominator: number, cap: number): Vec2 {
  return [Math.max(...[numerator, denominator].map((each) => toldWidth(tell.number(each), cap, 700))) + 0.8, cap * 2 + 2.4];
}

/** A filled arrowhead with its tip on a point, looking along a direction (ISO 129-1: closed and filled, and narrow). */
export function arrowhead(tip: Vec2, direction: Vec2, length = 2.5, width = 0.36 * length): Mark {
  const size = Math.hypot(direction[0], direction[1]);
  const along: Vec2 = [direction[0] / size, direction[1] / size];
  const half = width / 2;
  const back: Vec2 = [tip[0] - along[0] * length, tip[1] - along[1] * length];
  return area('ink', [tip, [back[0] - along[1] * half, back[1] + along[0] * half], [back[0] + along[1] * half, back[1] - along[0] * half]]);
}

/** The label boxes of a list of marks, in order. */
export function labelBoxes(marks: readonly Mark[]): readonly Box[] {
  return marks.flatMap((mark) => labelBox(mark));
}

export const movedBox = (box: Box, [x, y]: Vec2): Box => ({ ...box, x: box.x + x, y: box.y + y });

function labelBox(mark: Mark): readonly Box[] {
  switch (mark.mark) {
    case 'figure':
      return [mark.ground ? groundBox(toldText(mark.told), mark.centre, mark.cap, mark.turn) : textBox(toldText(mark.told), mark.centre, mark.cap, mark.weight, mark.turn)];
    case 'order':
      return [boxRound(mark.centre, 2 * mark.radius, 2 * mark.radius)];
    case 'fraction':
      return [boxRound(mark.centre, ...fractionSize(mark.numerator, mark.denominator, mark.cap))];
    case 'view':
      return labelBoxes(mark.marks);
    case 'placed':
      return labelBoxes(mark.marks).map((box) => movedBox(box, mark.at));
    default:
      return [];
  }
}
