export type * from './types.ts';
export { cachedDrawer, itemPictures, PART_SCALE, partScale, picturesExpected, picturesFor, type Drawable } from './item-pictures.ts';
export type { Format, PageFormat } from './formats.ts';
export { examplePictures, type Examples } from './example-pictures.ts';
export { stepPictures, type StepGivens } from './step-pictures.ts';
export { lineDrawing, newLineCaches } from './lines/index.ts';
export * from './pictograms/index.ts';
