import type { Words } from '../words/index.ts';

/** Languages of one booklet: the first gives its direction, the others stand beside it. */
export type LanguageSet = readonly [Words, ...Words[]];

/** As in file names: `ar+fr`. */
export const nameOf = (languageSet: LanguageSet): string => languageSet.map(({ lang }) => lang).join('+');
