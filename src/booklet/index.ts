export { bookletPages, glyphsFrom, type BookletInput, type BookletPages, type Edition } from './pages/index.ts';
export {
  BROWSER_VARIABLE, openPrinter, PAPER_SIZES, picturePlace, type Paper, type PictureBook, type PrintDocument, type Printer, type PrintPicture,
} from './print/index.ts';
export { packDocumentPages, readNotes, sheetDocument, type KitStock, type PackInput, type PackItem } from './workshop/index.ts';
export { languagesIn, loadWords, wordFiles, type LocaleFiles, type Words } from './words/index.ts';
