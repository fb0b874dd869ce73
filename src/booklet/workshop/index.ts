export { readNotes, type NoteBlock, type Notes } from './notes.ts';
export { packDocumentPages } from './pack-pages.tsx';
export { sheetDocument, type SheetSet } from './sheet-pages.ts';
export type { KitStock, PackInput, PackItem } from './types.ts';
