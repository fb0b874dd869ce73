import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { advances, roomless } from './advances.ts';

export type Weight = 400 | 700;

/** Cap height of Noto Sans over its em, from the font's OS/2 table; its numerals are as high. */
const capShare = 0.714;

/** Cap heights in mm of paper: figures on the pattern page, figures in step pictures, counts and places in a row. */
export const capHeights = { pattern: 3.5, step: 4, count: 5, order: 3.5 } as const;

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

/** The box round a line of figures that stands centred on a point; turned figures read from the right. */
export function textBox(text: string, centre: Vec2, cap: number, weight: Weight, turned: boolean): Box {
  const length = textWidth(text, cap, weight);
  const [width, height] = turned ? [cap, length] : [length, cap];
  return { x: centre[0] - width / 2, y: centre[1] - height / 2, width, height };
}
