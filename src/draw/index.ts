export type * from './types.ts';
export { cachedDrawer, itemPictures, PART_SCALE, partScale, picturesExpected, picturesFor, type Drawable } from './item-pictures.ts';
export type { Format } from './formats.ts';
export { cutPlanPictures } from './cut-plan-pictures.ts';
export { examplePictures, type Examples } from './example-pictures.ts';
export { cutBars, plateSheet, stepPictures, type StepGivens } from './step-pictures.ts';
export { patternPicture } from './flat/index.ts';
export { lineDrawing, newLineCaches } from './lines/index.ts';
export * from './pictograms/index.ts';
