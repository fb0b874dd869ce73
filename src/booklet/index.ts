export { bookletPages, caption, figure, glyphsFrom, lengthName, Spoken, stepAlt, type BookletInput, type BookletPages, type Edition, type PlacePicture } from './pages/index.ts';
export {
  BROWSER_VARIABLE, fontCss, openPrinter, PAPER_SIZES, picturePlace, type Paper, type PictureBook, type PrintDocument, type Printer, type PrintPicture,
} from './print/index.ts';
export { isolate, languagesIn, loadWords, pageWordFiles, splitIsolates, wordFiles, type LocaleFiles, type Words } from './words/index.ts';
