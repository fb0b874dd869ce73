export { sheetDocument, type SheetSet } from './sheet-pages.ts';
