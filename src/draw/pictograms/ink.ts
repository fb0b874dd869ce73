/**
 * The pen of the pictograms. Lengths are units of the 48-unit grid, x to the right, y downwards, angles in
 * degrees, clockwise on paper. At the least size, 8 mm, one unit is 0.167 mm: two units, the thinnest line,
 * print 0.33 mm wide.
 */

import { colours } from '../kit/colours.ts';

/** A piece of SVG that stands alone inside a viewBox: no ids, no classes, no references. */
export type Ink = string;

/** Widths of lines. Nothing is thinner than `thin`. */
export const thin = 2;
export const line = 2.5;
export const bold = 4;

export const black = colours.ink;
export const white = colours.white;
/** Panel material. */
export const tint = colours.board;

const rounded = (value: number): string => String(Math.round(value * 100) / 100);

/** A line along path data `d`. */
export const stroke = (d: string, width: number = line, colour: string = black): Ink =>
  `<path d="${d}" fill="none" stroke="${colour}" stroke-width="${rounded(width)}" stroke-linecap="round" stroke-linejoin="round"/>`;

/** A filled shape without a line. */
export const solid = (d: string, colour: string = black): Ink => `<path d="${d}" fill="${colour}"/>`;

/** A filled shape with a line round it; hides what lies under it. */
export const body = (d: string, fill: string = white, width: number = line, colour: string = black): Ink =>
  `<path d="${d}" fill="${fill}" stroke="${colour}" stroke-width="${rounded(width)}" stroke-linecap="round" stroke-linejoin="round"/>`;

export const dot = (x: number, y: number, radius: number, colour: string = black): Ink =>
  `<circle cx="${rounded(x)}" cy="${rounded(y)}" r="${rounded(radius)}" fill="${colour}"/>`;

export const ring = (x: number, y: number, radius: number, width: number = line, fill: string = white, colour: string = black): Ink =>
  `<circle cx="${rounded(x)}" cy="${rounded(y)}" r="${rounded(radius)}" fill="${fill}" stroke="${colour}" stroke-width="${rounded(width)}"/>`;

/** Path data of a straight line. */
export const straight = (x1: number, y1: number, x2: number, y2: number): string =>
  `M${rounded(x1)} ${rounded(y1)}L${rounded(x2)} ${rounded(y2)}`;

/** Path data of a rectangle. */
export const box = (x: number, y: number, width: number, height: number): string =>
  `M${rounded(x)} ${rounded(y)}h${rounded(width)}v${rounded(height)}h${rounded(-width)}z`;

/** Path data of a broken line from end to end: dashes `on` long, at least `off` apart (round ends not counted). */
export function dashes(x1: number, y1: number, x2: number, y2: number, on = 4, off = 5): string {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length];
  const count = Math.max(1, Math.floor((length + off) / (on + off)));
  const pitch = count === 1 ? 0 : (length - on) / (count - 1);
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [i * pitch, i * pitch + on];
    return straight(x1 + ux * from, y1 + uy * from, x1 + ux * to, y1 + uy * to);
  }).join('');
}

/** Ink drawn round (0, 0), turned by `angle` and put at (x, y). */
export const placed = (x: number, y: number, angle: number, ...ink: readonly Ink[]): Ink =>
  `<g transform="translate(${rounded(x)} ${rounded(y)}) rotate(${rounded(angle)})">${ink.join('')}</g>`;

export const together = (...ink: readonly Ink[]): Ink => ink.join('');
