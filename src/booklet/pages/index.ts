export { bookletPages } from './booklet-pages.tsx';
export { caption } from './captions.ts';
export { figure } from './colophon.tsx';
export { lengthName } from './dimensions.tsx';
export { Spoken } from './spoken.tsx';
export { stepAlt } from './step-alt.ts';
export { glyphsFrom } from './glyphs-from.ts';
export { loadInKilograms } from './load-in-kilograms.ts';
export type { BookletInput, BookletPages, Edition, Glyphs, Paper, PictureSize, PlacePicture, SizedPicture } from './types.ts';
