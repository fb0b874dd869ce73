/** Papers of which two pages go on a larger sheet. */
export const HALF_PAPERS: readonly string[] = ['a5', 'half-letter'];

/** Papers that one run of the command takes. */
export interface PaperGroup {
  readonly papers: readonly string[];
  readonly stitched: boolean;
}

/** The runs that an order's papers take for each item: those to be stitched go apart, because the command binds all or none. */
export function paperGroups({ papers, stitched }: PaperGroup): readonly PaperGroup[] {
  const [half, whole] = [papers.filter((paper) => HALF_PAPERS.includes(paper)), papers.filter((paper) => !HALF_PAPERS.includes(paper))];
  if (!stitched || half.length === 0) return [{ papers, stitched: false }];
  return [...(whole.length > 0 ? [{ papers: whole, stitched: false }] : []), { papers: half, stitched: true }];
}

interface Counted {
  readonly langs: readonly string[];
  readonly editions: readonly string[];
  readonly papers: readonly string[];
}

/** Booklets of each size. That of pictures alone is the same for all languages. */
export const bookletsOfSize = ({ langs, editions, papers }: Counted): number =>
  papers.length * ((editions.includes('pictures') ? 1 : 0) + (editions.includes('words') ? langs.length : 0));
