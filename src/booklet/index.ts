export { cutPages, type CutPagesInput } from './cut-pages/index.ts';
export { bookletPages, glyphsFrom, type BookletInput, type BookletPages, type Edition } from './pages/index.ts';
export {
  BROWSER_VARIABLE, openPrinter, picturePlace, type Paper, type PictureBook, type PrintDocument, type Printer, type PrintPicture,
} from './print/index.ts';
export { languagesIn, loadWords, wordFiles, type LocaleFiles, type Words } from './words/index.ts';
export { COUNTED_KINDS, surveyPages, type SurveyInput } from './survey-pages/index.ts';
