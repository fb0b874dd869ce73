export type * from './types.ts';
export { cachedDrawer, itemPictures, PART_SCALE, partPictures, picturesExpected } from './item-pictures.ts';
export { cutPlanPictures } from './cut-plan-pictures.ts';
export { stepPictures, type StepGivens } from './step-pictures.ts';
export { lineDrawing, newLineCaches } from './lines/index.ts';
export * from './pictograms/index.ts';
