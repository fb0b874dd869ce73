export { markingSheets } from './marking-sheets.ts';
export { overlap, sheetRoom, sheetWhite } from './room.ts';
