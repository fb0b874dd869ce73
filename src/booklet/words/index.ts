export { loadWords, type Values, type Words } from './load-words.ts';
export { languagesIn, pageWordFiles, readAbout, readWords, wordFiles, type About, type LocaleFiles } from './locale-files.ts';
export { compareLanguages, unusedKeys } from './compare-languages.ts';
export { describeWordsFault, type WordsFault } from './words-error.ts';
export { isolate, isolateName, splitIsolates, type Piece } from './isolates.ts';
export { pluralForms } from './plurals.ts';
