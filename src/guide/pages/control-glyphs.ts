import { colours, type Colour } from '../../draw/index.ts';
import type { Glyph } from '../glyph-store.ts';

/** The pen of the booklet's pictograms: a grid of 48 units, no line under 2. */
const line = (d: string, width = 3): string => `<path d="${d}" fill="none" stroke="${colours.ink}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`;
const shape = (d: string, fill: Colour = 'white', width = 3): string => `<path d="${d}" fill="${colours[fill]}" stroke="${colours.ink}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`;
const square = (...svg: readonly string[]): Glyph => ({ width: 48, svg: svg.join('') });

/** A picture in its frame, as the steps have it. */
const framed = (top: number): string => shape(`M6 ${top}H42V${top + 22}H6z`) + shape(`M14 ${top + 17}L20 ${top + 6}H32L26 ${top + 17}z`, 'board', 2);

/** What the buttons show. Drawn for reading from left to right; the style mirrors those that point along. */
export const controlGlyphs = {
  next: square(line('M12 8L36 24L12 40', 6)),
  previous: square(line('M36 8L12 24L36 40', 6)),
  /** Out of a panel, back to the work. */
  leave: square(line('M18 10L6 21L18 32', 5), line('M8 21H31Q41 21 41 31V40', 5)),
  /** A loop that comes back to its beginning. */
  again: square(line('M36 13A17 17 0 1 0 41 25', 5), shape('M27 15L39 17L39 5z', 'ink', 2)),
  /** The numbered steps as they lie. */
  all: square(shape('M5 5H20V20H5zM28 5H43V20H28zM5 28H20V43H5z', 'white', 3), shape('M28 28H43V43H28z', 'ink', 3)),
  /** Lines of words under a picture, and the picture alone. */
  words: square(framed(6), line('M6 35H42M6 42H30', 3)),
  'no-words': square(framed(13)),
  /** A lens over lines. */
  closer: square(shape('M20 4A16 16 0 1 1 20 36A16 16 0 1 1 20 4z'), line('M31.5 31.5L43 43', 6), line('M13 20H27M20 13V27', 3)),
  /** A body on its foot, a fingertip moving it round. */
  turn: square(shape('M14 7L24 3L34 7V24L24 28L14 24z', 'white', 2.5), line('M14 7L24 11L34 7M24 11V28', 2), line('M5 24Q6 36 24 36T43 24', 3.5), shape('M38 27L43.5 20L47 28.5z', 'ink', 1.5), shape('M20 46V38Q20 34 24 34T28 38V46', 'board', 2.5)),
  /** A part on its way to its place. */
  play: square(shape('M33 8H43V40H33z', 'board', 2.5), shape('M4 16H15V32H4z', 'white', 2.5), line('M18 24H25', 4), shape('M24 17L31 24L24 31z', 'ink', 1.5)),
  larger: square(line('M24 8V40M8 24H40', 5)),
  smaller: square(line('M8 24H40', 5)),
  /** Few short lines of words, and thick ones. */
  'small-text': square(line('M12 17H36M12 24H36M12 31H28', 2)),
  'large-text': square(line('M7 12H41M7 25H41M7 38H30', 6)),
  /** A sheet half in the light. */
  light: square(shape('M10 5H38V43H10z'), shape('M10 5H24V43H10z', 'ink')),
  box: square(shape('M8 8H40V40H8z', 'white', 3.5)),
  tick: square(line('M11 25L21 35L39 11', 7)),
} as const satisfies Readonly<Record<string, Glyph>>;
