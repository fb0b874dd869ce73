import { sourceLanguage, type LocaleFiles } from './locale-files.ts';

/** The tag of the made-up language that is made from the source language: its own, with a private-use subtag (BCP 47, 2.2.7), so that `Intl` counts alike. */
export const pseudoLanguage = (files: LocaleFiles): string => `${sourceLanguage(files)}-x-long`;
