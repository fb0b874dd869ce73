export { barLength, barStarts } from './check-bars.ts';
export { markingSheets, type MarkingSheets } from './marking-sheets.ts';
export { overlap, sheetRoom, sheetWhite, type SheetRoom } from './room.ts';
