import type { MakeNews, MakeOrder, ProjectTexts } from '../types.ts';

/** What the page's server asks of the program round it: it reads, writes and makes nothing by itself. */
export interface Workshop {
  /** All texts, read anew. */
  texts(): Pick<ProjectTexts, 'files' | 'locales'>;
  /** Writes a file whole or not at all. */
  write(path: string, text: string): void;
  /** A finished file, by the path the news told. */
  read(path: string): Buffer;
  /** Starts making; the last news is `end`. */
  make(order: MakeOrder, tell: (news: MakeNews) => void): Making;
}

export interface Making {
  /** Asks it to stop; the news `end` follows when it has. */
  stop(): void;
  /** Comes when it has ended, in whichever way. */
  readonly ended: Promise<void>;
}
