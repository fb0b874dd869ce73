import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';

export type Weight = 400 | 700;

/** Cap height of Noto Sans over its em, from the font's OS/2 table; its numerals are as high. */
const capShare = 0.714;

/** Advance widths in 1/1000 em: [400, 700], from the font's hmtx table. All numerals are equally wide. */
const advances: Readonly<Record<string, readonly [number, number]>> = {
  '.': [268, 281],
  '/': [372, 415],
  '·': [268, 281],
  '×': [572, 572],
  A: [639, 692], B: [650, 665], C: [632, 642], D: [730, 732], E: [556, 560], F: [519, 549], G: [728, 724], H: [741, 765], I: [339, 389],
  J: [273, 331], K: [619, 664], L: [524, 559], M: [907, 943], N: [760, 813], O: [781, 791], P: [605, 621], Q: [781, 791], R: [622, 656],
  S: [549, 551], T: [556, 577], U: [731, 756], V: [600, 650], W: [930, 967], X: [586, 670], Y: [566, 626], Z: [572, 579],
  a: [561, 599], b: [615, 632], c: [480, 516], d: [615, 632], e: [564, 597], f: [344, 387], m: [935, 975],
  ' ': [260, 260],
  'Ø': [781, 791],
  '°': [428, 424],
};
const numeral = 572;

/** Cap heights in mm of paper: figures on the pattern page, figures in step pictures, counts and places in a row. */
export const capHeights = { pattern: 3.5, step: 4, count: 5, order: 3.5 } as const;

/** Font size in mm for a cap height in mm. */
export function fontSize(cap: number): number {
  return cap / capShare;
}

/** Width of a line of figures in mm. Throws a RangeError on a sign whose width is not known here. */
export function textWidth(text: string, cap: number, weight: Weight): number {
  const units = [...text].reduce((sum, sign) => sum + advance(sign, weight), 0);
  return (units / 1000) * fontSize(cap);
}

function advance(sign: string, weight: Weight): number {
  if (sign >= '0' && sign <= '9') return numeral;
  const widths = advances[sign];
  if (!widths) throw new RangeError(`No width known for the sign "${sign}" in a drawing; numerals and ${Object.keys(advances).join('')} are.`);
  return weight === 700 ? widths[1] : widths[0];
}

/** The box round a line of figures that stands centred on a point; turned figures read from the right. */
export function textBox(text: string, centre: Vec2, cap: number, weight: Weight, turned: boolean): Box {
  const length = textWidth(text, cap, weight);
  const [width, height] = turned ? [cap, length] : [length, cap];
  return { x: centre[0] - width / 2, y: centre[1] - height / 2, width, height };
}

/** A length as the worker reads it: whole or half millimetres, Latin numerals. */
export function lengthText(mm: number): string {
  return String(Math.round(mm * 2) / 2);
}
