export { bookletPages, glyphsFrom, type BookletInput, type BookletPages, type Edition } from './pages/index.ts';
export {
  BROWSER_VARIABLE, openPrinter, picturePlace, type Paper, type PictureBook, type PrintDocument, type Printer, type PrintPicture,
} from './print/index.ts';
export { isHalfPaper, MOST_SHEETS, SHEET_THICKNESS, stitched, type Stitching } from './stitch/index.ts';
export { overviewPage, wallPages, type PosterPaper } from './posters/index.ts';
export { isDay, isName, languagesIn, loadWords, pseudoLanguage, withPseudoLanguage, wordFiles, type LocaleFiles, type Review, type Words } from './words/index.ts';
export { exportWords, importWords, type ReferencePicture } from './exchange/index.ts';
