import type { Glyph, Glyphs } from './types.ts';

/** The chapters that have a heading; keys under `booklet.chapters`. */
export type ChapterName = 'before' | 'parts' | 'dimensions' | 'lengths' | 'pattern' | 'creasing' | 'plates' | 'steps' | 'checks' | 'load' | 'colophon';

const line = (d: string, width = 2.5): string =>
  `<path d="${d}" fill="none" stroke="#000" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`;

/** Pages that show by themselves what they are for bear no sign: readers took any for one more thing to do. */
const unsigned: Glyph = { width: 1, svg: '<path d="M0 0H1V1H0z" fill="#fff"/>' };

/** A dimension line between two bounds. */
const dimensions: Glyph = {
  width: 48,
  svg: line('M4 10V38M44 10V38') + line('M6 24H42') + line('M12 18L6 24L12 30M36 18L42 24L36 30'),
};

/** Bands with a numeral's place in the margin. */
const steps: Glyph = {
  width: 48,
  svg: line('M4 16H44M4 32H44', 2) + line('M6 7L8.5 5V12M5.5 21.5Q8.5 19.5 10.5 22T5.5 28H11M5.5 36.5H10.5L7.5 39.5Q11 39.5 10.5 42T5.5 43.5') + line('M17 4H43V12H17zM17 20H43V28H17zM17 36H43V44H17z', 2),
};

/** A sheet with lines of small print. */
const colophon: Glyph = {
  width: 48,
  svg: line('M9 3H39V45H9z') + line('M15 29H33M15 34H33M15 39H26', 2),
};

/** The pictogram over a chapter: one of the chapter's own, or what is done in it. */
export function chapterGlyph(glyphs: Glyphs, name: ChapterName): Glyph {
  switch (name) {
    case 'before':
    case 'parts': return unsigned;
    case 'dimensions': return dimensions;
    case 'lengths': return glyphs.action('cut-tubes');
    case 'pattern': return glyphs.action('cut-notches');
    case 'creasing': return glyphs.action('wrap-side');
    case 'plates': return glyphs.action('cut-panel');
    case 'steps': return steps;
    case 'checks': return glyphs.plain('right');
    case 'load': return glyphs.plain('load');
    case 'colophon': return colophon;
  }
}
