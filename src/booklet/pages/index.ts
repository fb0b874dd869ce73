export { bookletPages } from './booklet-pages.tsx';
export { glyphsFrom, type Pictograms } from './glyphs-from.ts';
export { loadInKilograms } from './load-in-kilograms.ts';
export type { BookletInput, BookletPages, Edition, Glyph, Glyphs, Paper, PictureSize, PlacePicture, PlainGlyph } from './types.ts';
