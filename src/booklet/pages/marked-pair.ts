import type { Glyph } from './types.ts';

/** Units of the pictograms' grid: where tick or cross stands, close to its own picture, and how much it adds to the width. */
const markAt = { x: 74, y: 26, scale: 0.42 } as const;
export const markWidth = 22;

/** A picture of a pair with its tick or cross. */
export function marked(picture: Glyph, mark: Glyph): Glyph {
  const { x, y, scale } = markAt;
  return {
    width: picture.width + markWidth, svg: `${picture.svg}<g transform="translate(${x} ${y}) scale(${scale})">${mark.svg}</g>`,
    ...(picture.printedAs === undefined || mark.printedAs === undefined ? {} : { printedAs: `${picture.printedAs}+${mark.printedAs}` }),
  };
}
