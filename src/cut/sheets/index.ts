export type * from './types.ts';
export { largestClear, loosePieces, offCutsOf, overlaps, piecesOf } from './off-cuts.ts';
export { numberedCuts, type NumberedCut } from './numbered-cuts.ts';
export { planSheets } from './plan-sheets.ts';
