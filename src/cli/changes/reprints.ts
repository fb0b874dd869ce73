import type { Reprint } from '../../booklet/index.ts';

/** A booklet, and on which of its pages each picture stands. */
export interface BookletPages {
  readonly edition: Reprint['edition'];
  /** Null where its pages are the same on all. */
  readonly paper: Reprint['paper'];
  /** Null where it has no words. */
  readonly lang: string | null;
  readonly pages: ReadonlyMap<string, readonly number[]>;
}

/** The pages with a picture that changed; booklets of one edition and paper in which they are the same are told together. */
export function reprints(booklets: readonly BookletPages[], changed: ReadonlySet<string>): readonly Reprint[] {
  const together = new Map<string, Reprint>();
  for (const { edition, paper, lang, pages: on } of booklets) {
    const pages = [...new Set([...changed].flatMap((id) => on.get(id) ?? []))].sort((one, other) => one - other);
    const pageCount = Math.max(0, ...[...on.values()].flat());
    const key = JSON.stringify([edition, paper, pages, pageCount]);
    const langs = [...new Set([...together.get(key)?.langs ?? [], ...(lang === null ? [] : [lang])])];
    if (pages.length > 0) together.set(key, { edition, paper, langs, pages, pageCount });
  }
  return [...together.values()];
}
