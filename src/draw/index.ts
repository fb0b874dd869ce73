export type * from './types.ts';
export { cachedDrawer, itemPictures, PART_SCALE, picturesExpected } from './item-pictures.ts';
export { finishedPicture } from './finished-picture.ts';
export { stepPictures, type StepGivens } from './step-pictures.ts';
export { lineDrawing, newLineCaches } from './lines/index.ts';
export * from './pictograms/index.ts';
export { markingSheets, sheetWhite } from './sheets/index.ts';
