import type { AnyPaper, Paper } from '../papers/index.ts';

/** A picture to print: `svg` is one whole `<svg>` whose viewBox is in mm of paper. */
export interface PrintPicture {
  readonly id: string;
  readonly svg: string;
  /** Size on paper, mm. */
  readonly width: number;
  readonly height: number;
}

export interface Field {
  readonly width: number;
  readonly height: number;
}

/** One language and edition of a booklet: words, and places for pictures. */
export interface PrintDocument extends DocumentFacts {
  /** What goes into `<body>`; pictures stand where `picturePlace` put a place. */
  readonly html: string;
  /** Style of the document; margins by `@page { margin: … }`, the size comes from `paper`. */
  readonly css: string;
}

/** What a document is, besides what is printed on its pages. */
export interface DocumentFacts {
  readonly id: string;
  /** BCP 47 tag, for example `en` or `ar`. */
  readonly lang: string;
  readonly dir: 'ltr' | 'rtl';
  readonly title: string;
  readonly paper: AnyPaper;
  /** Size of its pages, mm, where these stand in the middle of a larger paper; null where they are as large as it. */
  readonly field?: Field | null;
  readonly subject?: string;
  /** What the content was made from, for example a hash; stands in the file's properties and in its id. */
  readonly contentMark: string;
}

export type { AnyPaper, Paper };

/** Printed pictures, ready to be laid into any number of documents. Plain data: it can be stored and read back. */
export interface PictureBook {
  readonly sheets: readonly PictureSheet[];
}

/** An untagged PDF with one picture a page, in the order of `pictures`. */
export interface PictureSheet {
  readonly pdf: Uint8Array;
  readonly pictures: readonly { readonly id: string; readonly width: number; readonly height: number }[];
}

/** Something that would look wrong on paper. `by` is in mm. */
export type PageFault =
  | { readonly kind: 'clipped'; readonly at: string; readonly text: string; readonly by: number }
  | { readonly kind: 'outside'; readonly at: string; readonly text: string; readonly by: number }
  | { readonly kind: 'overlap'; readonly at: string; readonly text: string; readonly by: number }
  | { readonly kind: 'face'; readonly at: string; readonly text: string; readonly face: string };

export interface Printer {
  /** Which browser prints, and how it was found. */
  readonly browser: { readonly path: string; readonly how: BrowserFound };
  /** Begins to print a list of pictures of which only the first are known, as far as they fill sheets. `pictures` of the whole list takes what is printed so; there it shows when it fails. */
  ahead(first: readonly PrintPicture[]): void;
  /** Prints pictures once; ids must differ. */
  pictures(list: readonly PrintPicture[]): Promise<PictureBook>;
  /** Prints one document with the book's pictures: the same input gives the same bytes, whatever was printed before. */
  document(doc: PrintDocument, book: PictureBook): Promise<Uint8Array>;
  /** Its pages with places for the pictures, for a `Finisher`. */
  pages(doc: PrintDocument): Promise<PrintedPages>;
  /** Text that is cut off, sticks out of its sheet, stands on other text or a picture, or falls back to a face that is not ours. */
  measure(doc: PrintDocument): Promise<readonly PageFault[]>;
  close(): Promise<void>;
}

/** `named` by FOLDWRIGHT_BROWSER, `puppeteer` its own, `system` on PATH, `packaged` from the npm package. */
export type BrowserFound = 'named' | 'puppeteer' | 'system' | 'packaged';

/** A browser to start: program, arguments and whole environment. */
export interface ChosenBrowser {
  readonly path: string;
  readonly how: BrowserFound;
  readonly args: readonly string[];
  readonly env: Readonly<Record<string, string>>;
}

/** A copy of a document by what may differ: it needs its own id on each paper. */
export type OnPaper = Pick<PrintDocument, 'id' | 'paper'>;

/** A document's pages as the browser printed them, and what it saw of them. Plain data. */
export interface PrintedPages {
  readonly words: Uint8Array;
  readonly shown: Shown;
}

/** What a document in the tab has: how many places for pictures, and every heading's words and every text in reading order. */
export interface Shown {
  readonly places: number;
  readonly headings: readonly string[];
  /** The sheets (see `measureTab`) whose content reaches out sideways, by how many CSS pixels. */
  readonly tooWide: readonly { readonly page: string; readonly by: number }[];
  readonly texts: readonly ShownText[];
}

/** A text of a document as it stands in its elements, and the language it is marked with, BCP 47. */
export interface ShownText {
  readonly text: string;
  readonly lang: string;
}
