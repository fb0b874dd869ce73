import { finish } from './finish.ts';
import { openBook, type OpenedBook } from './pictureForms.ts';
import type { DocumentFacts, OnPaper, PictureBook, PrintedPages } from './types.ts';

/** What is to be finished: printed pages, what they are of, the pictures to be laid in, and the copies that are wanted. Plain data. */
export interface ToFinish {
  readonly printed: PrintedPages;
  readonly doc: DocumentFacts;
  readonly book: PictureBook;
  readonly copies: readonly OnPaper[];
}

/** Gives the finished PDF of each copy, in their order. */
export type Finisher = (given: ToFinish) => Promise<readonly Uint8Array[]>;

/** Books kept open: those of a size, and the next size's first. */
const OPEN_BOOKS = 3;

/** A finisher opens a book that it is given again, or a copy of, only once. */
export function newFinisher(): Finisher {
  const open: { readonly book: PictureBook; readonly opened: Promise<OpenedBook> }[] = [];
  const openOnce = (book: PictureBook): Promise<OpenedBook> => {
    const found = open.find((one) => isSame(one.book, book));
    if (found) return found.opened;
    const fresh = { book, opened: openBook(book) };
    open.unshift(fresh);
    open.splice(OPEN_BOOKS);
    return fresh.opened;
  };
  return async ({ printed, doc, book, copies }) => finish(printed, doc, await openOnce(book), copies);
}

const isSame = (one: PictureBook, other: PictureBook): boolean =>
  one === other || (one.sheets.length === other.sheets.length && one.sheets.every(({ pdf }, index) => Buffer.compare(pdf, other.sheets[index]?.pdf ?? new Uint8Array()) === 0));
