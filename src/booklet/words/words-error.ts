/** A fault in the locale files. Line and column are 1 where only the file is known. */
export interface WordsFault {
  /** Path under `locales/`. */
  readonly path: string;
  readonly line?: number;
  readonly column?: number;
  readonly field: string;
  readonly found: string;
  readonly remedy: string;
}

/** One line that a translator can act on: file, line, column, field, what was found, what would be right. */
export function describeWordsFault({ path, line = 1, column = 1, field, found, remedy }: WordsFault): string {
  return `locales/${path}:${line}:${column} ${field === '' ? '' : `${oneLine(field)}: `}found ${oneLine(found)}; ${oneLine(remedy)}`;
}

/** A file may hold line ends where nobody looks for them. */
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

export function wordsError(fault: WordsFault): Error {
  return new Error(describeWordsFault(fault));
}

/** What is wrong where no language is the source. */
export const noSource: WordsFault = { path: '', field: 'about.json', found: 'no source language', remedy: 'set "source": true in one about.json' };
