export { SHEET_THICKNESS } from './layout.ts';
export { MOST_SHEETS, stitchedSheets, type Leaf, type StitchedSheet } from './signatures.ts';
export { stitched, type Stitching } from './stitch.ts';
