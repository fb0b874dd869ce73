import { comesOn, EDITIONS, isHalfPaper, languagesIn, readAbout, type AnyEdition, type LocaleFiles } from '../booklet/index.ts';

/** Editions and papers that one run of the command takes. */
export interface RunWish {
  readonly editions: readonly string[];
  readonly papers: readonly string[];
  readonly stitched: boolean;
}

/**
 * The runs that an order takes for each item: papers to be stitched go apart, because the command binds all or none.
 * Editions that come on none of a run's papers are left out of it, and so are papers that none of them comes on.
 */
export function runsOfItem({ editions, papers, stitched }: RunWish): readonly RunWish[] {
  const bound: readonly string[] = stitched ? papers.filter(isHalfPaper) : [];
  const loose = papers.filter((paper) => !bound.includes(paper));
  return [fitting(editions, loose, false), fitting(editions, bound, true)].filter((run) => run.editions.length > 0);
}

function fitting(wished: readonly string[], papers: readonly string[], stitched: boolean): RunWish {
  const editions = EDITIONS.filter((edition) => wished.includes(edition) && papers.some((paper) => comesOn(edition, paper)));
  return { editions, papers: papers.filter((paper) => editions.some((edition) => comesOn(edition, paper))), stitched };
}

interface Counted {
  readonly langs: readonly string[];
  readonly editions: readonly string[];
  readonly papers: readonly string[];
}

/** Booklets of each size. That of pictures alone is the same for all languages; posters come once for each of the `directions` of reading. */
export function bookletsOfSize({ langs, editions, papers }: Counted, directions: number): number {
  const ofEdition: Readonly<Record<AnyEdition, number>> = { words: langs.length, pictures: 1, wall: directions, overview: directions };
  return EDITIONS.filter((edition) => editions.includes(edition))
    .reduce((sum, edition) => sum + ofEdition[edition] * papers.filter((paper) => comesOn(edition, paper)).length, 0);
}

/** In how many directions the languages of an order are read; those of all languages where none is named. Of `ar+fr` the first counts. */
export function directionsOf(locales: LocaleFiles, langs: readonly string[]): number {
  const firsts = langs.length === 0 ? languagesIn(locales) : langs.map((codes) => codes.split('+')[0] ?? codes);
  return new Set(firsts.map((lang) => readAbout(locales, lang).direction)).size;
}
