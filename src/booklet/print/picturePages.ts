import { PIXELS_PER_MM } from './units.ts';
import type { PrintPicture } from './types.ts';

/** Space round each picture on its page, CSS pixels, so that a line on its very edge is printed whole. */
export const BLEED_PIXELS = 4;

/** What a browser cannot print as lines, and what would reach out of the picture. */
const UNPRINTABLE = /<(image|mask|filter|foreignObject|script)\b/i;

/** Pages that a tab can set up: a style, and for each page what goes into a shadow tree under `<div id="picture0">` and so on. */
export interface PicturePages {
  readonly css: string;
  readonly shadows: readonly string[];
}

/**
 * A page for each picture, of its size and a bleed.
 * Each picture stands in a shadow tree of its own, so that ids and styles of one do not reach another.
 * @throws when a picture's size and viewBox differ or it holds what would become a bitmap.
 */
export function picturePages(pictures: readonly PrintPicture[]): PicturePages {
  pictures.forEach(checkPicture);
  return { css: pictures.map(pageRule).join('\n'), shadows: pictures.map(shadow) };
}

/**
 * The picture in whole CSS pixels, its viewBox grown to match: a browser rounds sizes to 1/64 pixel
 * and would else shrink the drawing by up to 0.02 %.
 */
function shadow({ svg, width, height }: PrintPicture): string {
  const pixels = { width: Math.ceil(width * PIXELS_PER_MM), height: Math.ceil(height * PIXELS_PER_MM) };
  const grown = svg.replace(VIEW_BOX, (_all, before: string, quote: string, box: string) => {
    const [x = 0, y = 0] = numbers(box);
    return `${before}${quote}${x} ${y} ${pixels.width / PIXELS_PER_MM} ${pixels.height / PIXELS_PER_MM}${quote}`;
  });
  return `<style>:host > svg { display: block; overflow: visible; width: ${pixels.width}px; height: ${pixels.height}px }</style>${grown}`;
}

const VIEW_BOX = /(<svg\b[^>]*?\sviewBox=)(["'])([^"']*)\2/;

const numbers = (box: string): readonly number[] => box.trim().split(/[\s,]+/).map(Number);

function pageRule({ width, height }: PrintPicture, index: number): string {
  const page = { width: pagePixels(width), height: pagePixels(height) };
  return `@page picture${index} { size: ${page.width}px ${page.height}px; margin: 0 }
#picture${index} { page: picture${index}; break-after: page; overflow: hidden; box-sizing: border-box; width: ${page.width}px; height: ${page.height}px; padding: ${BLEED_PIXELS}px }`;
}

function pagePixels(mm: number): number {
  return Math.ceil(mm * PIXELS_PER_MM) + 2 * BLEED_PIXELS;
}

function checkPicture({ id, svg, width, height }: PrintPicture): void {
  const box = VIEW_BOX.exec(svg)?.[3] ?? '';
  const [, , boxWidth = NaN, boxHeight = NaN] = numbers(box);
  if (!(Math.abs(boxWidth - width) < 0.01 && Math.abs(boxHeight - height) < 0.01)) {
    throw new Error(`picture “${id}”: its viewBox is “${box}”, its size ${width} × ${height} mm; the viewBox must be in mm of paper and of that size`);
  }
  const [, element] = UNPRINTABLE.exec(svg) ?? [];
  if (element !== undefined) throw new Error(`picture “${id}” holds <${element}>, which does not print as lines; draw it with paths`);
}
