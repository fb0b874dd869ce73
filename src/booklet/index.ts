export * from './publications/index.ts';
export { PAPERS, papersOf, type AnyPaper, type FullPaper, type Paper } from './papers/index.ts';
export { pictureSizes } from './picture-sizes.ts';
export { ASPECTS, changePages, ranges, type Change, type ChangePagesInput, type Pieces, type Reprint, type StepWork, type StillServing, type Told } from './change-pages/index.ts';
export { cutPages, type CutPagesInput } from './cut-pages/index.ts';
export { bookletPages, caption, figure, glyphsFrom, lengthName, sheetSize, Spoken, stepAlt, type BookletInput, type PlacePicture } from './pages/index.ts';
export {
  browserMark, chooseBrowser, fontCss, isAlive, newFinisher, openPrinter, picturePlace, picturesOnPages, readTar, type Finisher, type ToFinish, type PictureBook, type PrintDocument, type Printer, type PrintPicture,
} from './print/index.ts';
export { MOST_SHEETS, SHEET_THICKNESS } from './stitch/index.ts';
export { isDay, isName, isolate, languagesIn, loadWords, pseudoLanguage, readAbout, readWords, splitIsolates, withPseudoLanguage, wordFiles, type LocaleFiles, type Review, type Words } from './words/index.ts';
export { exportWords, importWords, type ReferencePicture } from './exchange/index.ts';
export { readNotes, type KitStock, type PackItem } from './workshop/index.ts';
export * from './pages/retold.ts';
export { COUNTED_KINDS, surveyPages } from './survey-pages/index.ts';
