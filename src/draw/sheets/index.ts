export { barLength, barStarts } from './check-bars.ts';
export type { MarkingSheets } from './laid-out.ts';
export { markingSheets } from './marking-sheets.ts';
export { overlap, sheetRoom, sheetWhite, type SheetRoom } from './room.ts';
