import * as drawing from '../../draw/index.ts';
import { glyphsFrom, marked, type Glyph, type Glyphs } from '../pages/index.ts';
import type { PrintPicture } from '../print/index.ts';

/** Units of the pictograms' grid in a millimetre of a printed pictogram. */
const PER_MM = 4;

/** A pictogram by the id it is printed under. */
const printed = (glyph: drawing.Pictogram): Glyph => ({ svg: glyph.svg, width: glyph.width, printedAs: `glyph:${glyph.name}` });

/** Pictograms that are printed once for all places of all booklets: there are hundreds of places in each. */
export const printedGlyphs: Glyphs = glyphsFrom({
  ...drawing,
  pictogram: (name: drawing.PictogramName) => printed(drawing.pictogram(name)),
  actionPictogram: (action) => printed(drawing.actionPictogram(action)),
  signFor: (caution) => printed(drawing.signFor(caution)),
  pairFor: (name: drawing.PairName) => { const { right, wrong } = drawing.pairFor(name); return { right: printed(right), wrong: printed(wrong) }; },
});

let prints: readonly PrintPicture[] | null = null;

/** The prints of them all, always the same and in the same order: what a browser calls things in a print hangs on what else is in it. */
export const glyphPrints = (): readonly PrintPicture[] => prints ??= [
  ...drawing.pictogramNames.map((name) => printed(drawing.pictogram(name))),
  ...drawing.pairNames.flatMap((name) => {
    const { right, wrong } = printedGlyphs.pair(name);
    return [marked(right, printedGlyphs.plain('right')), marked(wrong, printedGlyphs.plain('wrong'))];
  }),
].map(({ svg, width, printedAs = '' }) => {
  const size = { width: width / PER_MM, height: 48 / PER_MM };
  return { id: printedAs, ...size, svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size.width} ${size.height}" width="${size.width}mm" height="${size.height}mm"><g transform="scale(${1 / PER_MM})">${svg}</g></svg>` };
});
