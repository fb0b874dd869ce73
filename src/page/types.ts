import type { LocaleFiles } from '../booklet/index.ts';

/** What the page works from, as it stands on the disk. */
export interface ProjectTexts {
  /** The texts of all item and kit files by their path, such as `steps/<item>/item.yaml`. */
  readonly files: Readonly<Record<string, string>>;
  /** SHA-256 of each of them: a file is saved only where it is still the one that was read. */
  readonly marks: Readonly<Record<string, string>>;
  readonly locales: LocaleFiles;
  /** Whether this page may save and have booklets made, or is only to be looked at. */
  readonly mayChange: boolean;
}

/** Values to write into one size of an item file, each as it shall stand there: `900 mm`. */
export interface SaveOrder {
  readonly path: string;
  readonly size: string;
  readonly values: Readonly<Record<string, string>>;
  /** The mark of the file that the values were chosen by. */
  readonly mark: string;
}

export type SaveAnswer =
  | { readonly saved: true; readonly text: string; readonly mark: string }
  /** `moved`: the file is another by now. `refused`: the values are not allowed; `told` says where and why. */
  | { readonly saved: false; readonly why: 'moved' | 'refused'; readonly told: string };

/** A new size of an item, or a new item, from a size there is. */
export interface GrowOrder {
  readonly what: 'size' | 'item';
  /** The item and the size it is made from. */
  readonly path: string;
  readonly size: string;
  /** As it shall stand in the file: `long-bench`. */
  readonly name: string;
  /** As readers shall see it. */
  readonly title: string;
  /** Values that differ from the size's, each as it shall stand in the file. */
  readonly values: Readonly<Record<string, string>>;
  /** The mark of the file that it is made from. */
  readonly mark: string;
}

export type GrowAnswer =
  | { readonly saved: true; readonly path: string; readonly size: string }
  | Extract<SaveAnswer, { readonly saved: false }>;

/** What the page hears when it asks whether its program still runs. */
export interface Alive {
  /** The marks of all item and kit files. */
  readonly marks: Readonly<Record<string, string>>;
  /** How many makings were begun so far: one more, and there are news to follow. */
  readonly begun: number;
}

/** What is to be made. */
export type MakeOrder = BookletOrder | PackOrder;

export interface BookletOrder {
  readonly what: 'booklets';
  readonly items: readonly { readonly item: string; readonly sizes: readonly string[] }[];
  /** `ar`, or `ar+fr` for two side by side in one booklet. */
  readonly langs: readonly string[];
  readonly editions: readonly string[];
  readonly papers: readonly string[];
  /** Papers of half a sheet also two pages on a sheet, to fold and staple. */
  readonly stitched: boolean;
  /** Prints although a check fails; every page is then stamped. */
  readonly despiteFindings: boolean;
}

/** The workshop pack of pieces to build, one in each language. */
export interface PackOrder {
  readonly what: 'pack';
  readonly pieces: readonly { readonly item: string; readonly size: string; readonly count: number }[];
  readonly learners: number;
  readonly langs: readonly string[];
  /** When each day begins: `08:30`. */
  readonly start: string;
  readonly papers: readonly string[];
}

/** A file that stands there whole. */
export interface MadeFile {
  readonly path: string;
  readonly bytes: number;
}

/** How a making goes, told as it goes. */
export type MakeNews =
  /** It begins: so many sizes are drawn, and so many booklets or packs come of it. Beside it, what was made before. */
  | { readonly news: 'begun'; readonly what: MakeOrder['what']; readonly sizes: number; readonly booklets: number; readonly earlier: readonly MadeFile[] }
  /** An item is begun: its checks and the order of its steps are worked out first. */
  | { readonly news: 'item'; readonly item: string }
  /** One size is begun: so many pictures and booklets, about. */
  | { readonly news: 'size'; readonly total: number }
  /** One picture or booklet of the size is done. */
  | { readonly news: 'done' }
  | ({ readonly news: 'file' } & MadeFile)
  | { readonly news: 'end'; readonly how: 'made' | 'stopped' }
  | { readonly news: 'end'; readonly how: 'failed'; readonly told: string };
