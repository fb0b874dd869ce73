export type * from './types.ts';
export { cachedDrawer, itemPictures, PART_SCALE, picturesExpected } from './item-pictures.ts';
export { cutBars, plateSheet, stepPictures, type StepGivens } from './step-pictures.ts';
export { patternPicture } from './flat/index.ts';
export { lineDrawing, newLineCaches } from './lines/index.ts';
export * from './pictograms/index.ts';
