import type { Glyph, Glyphs } from './types.ts';

/** The chapters that have a heading; keys under `booklet.chapters`. */
export type ChapterName = 'before' | 'parts' | 'dimensions' | 'lengths' | 'pattern' | 'creasing' | 'plates' | 'steps' | 'checks' | 'load' | 'colophon';

const line = (d: string, width = 2.5): string =>
  `<path d="${d}" fill="none" stroke="#000" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`;

/** A tube, a panel and a pin, laid out in a row. */
const parts: Glyph = {
  width: 48,
  svg: line('M3 8H45V14H3z') + line('M3 22H29V45H3z') + line('M35 22H45M40 22V45'),
};

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
    case 'before': return glyphs.plain('look');
    case 'parts': return parts;
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

/** Pages that show by themselves what they are for. */
const SHOWN: readonly ChapterName[] = ['before', 'parts'];
/** What paints, and is not seen: the file's outline lists no heading that paints nothing. */
const unseen: Glyph = { width: 1, svg: '<path d="M0 0H1V1H0z" fill="#fff"/>' };

/** The pictogram over a chapter on paper: none that readers take for one more thing to do. */
export const headingGlyph = (glyphs: Glyphs, name: ChapterName): Glyph => (SHOWN.includes(name) ? unseen : chapterGlyph(glyphs, name));
