import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { boxRound } from './geometry.ts';
import { advances, descents, roomless } from './advances.ts';

export type Weight = 400 | 700;

/** Cap height of Noto Sans over its em, from the font's OS/2 table; its numerals are as high. */
const capShare = 0.714;

/**
 * Cap heights in mm of paper: figures on the pattern page, figures in step pictures, counts and places in a row; texts
 * of scenes, 12.8 pt of type (ISO/IEC Guide 37 (R) asks for 10 pt at least).
 */
export const capHeights = { pattern: 3.75, step: 4, count: 5, order: 3.75, scene: 3.75 } as const;

/** Font size in mm for a cap height in mm. */
export function fontSize(cap: number): number {
  return cap / capShare;
}

/** Width of a text in mm. Throws a RangeError on a sign whose width is not known here. */
export function textWidth(text: string, cap: number, weight: Weight): number {
  const units = [...text.replace(roomless, '')].reduce((sum, sign) => sum + advance(sign, weight), 0);
  return (units / 1000) * fontSize(cap);
}

function advance(sign: string, weight: Weight): number {
  const widths = advances[sign];
  if (!widths) throw new RangeError(`No width known for the sign "${sign}" in a drawing; those of ${Object.keys(advances).join('')} are.`);
  return widths[weight === 700 ? 1 : 0];
}

/** The box round a line of figures that stands centred on a point, turned by degrees clockwise. */
export const textBox = (text: string, centre: Vec2, cap: number, weight: Weight, turn: number): Box =>
  turnedBox(centre, textWidth(text, cap, weight), cap, turn);

/** White to the left and right of a bold text, and above and below it, mm. */
const rim = { aside: 0.6, above: 0.5 } as const;

/** Width and height of the white ground of a bold text, mm. */
export function textRoom(text: string, cap: number): { readonly width: number; readonly height: number } {
  const below = 2 * Math.max(...[...text].map((sign) => descents[sign] ?? 0), 0) * (fontSize(cap) / 1000);
  return { width: textWidth(text, cap, 700) + 2 * rim.aside, height: cap + 2 * rim.above + below };
}

/** The box round a bold text on its ground, turned by degrees clockwise. */
export function groundBox(text: string, centre: Vec2, cap: number, turn: number): Box {
  const { width, height } = textRoom(text, cap);
  return turnedBox(centre, width, height, turn);
}

function turnedBox(centre: Vec2, width: number, height: number, turn: number): Box {
  if (turn === 0) return boxRound(centre, width, height);
  const [c, s] = [Math.abs(Math.cos((turn * Math.PI) / 180)), Math.abs(Math.sin((turn * Math.PI) / 180))];
  return boxRound(centre, width * c + height * s, width * s + height * c);
}
