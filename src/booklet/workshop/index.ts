export { readNotes } from './notes.ts';
export { packDocumentPages } from './pack-pages.tsx';
export { sheetDocument } from './sheet-pages.ts';
export type { KitStock, PackInput, PackItem } from './types.ts';
