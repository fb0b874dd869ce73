export { loadWords, type Words } from './load-words.ts';
export { isLocaleTag, languagesIn, readAbout, readWords, sourceLanguage, WORDS_LIMITS, type About, type FlatWords } from './locale-files.ts';
export { wordFiles, type LocaleFiles, type WordFile } from './word-files.ts';
export { describeWordsFault, type WordsFault } from './words-error.ts';
export { isolate, isolateName, splitIsolates } from './isolates.ts';
export { baseKey, pluralForm, pluralForms } from './plurals.ts';
export { pseudoLanguage, pseudoText, withPseudoLanguage } from './pseudo.ts';
export { currentReview, textsMark, type Review } from './review.ts';
export { isDay, isName } from './signature.ts';
