import { comesOn, EDITIONS, languagesIn, papersOf, PUBLICATIONS, readAbout, type Edition, type LocaleFiles } from '../booklet/index.ts';

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
  const bound: readonly string[] = stitched ? papers.filter(canBeStitched) : [];
  const loose = papers.filter((paper) => !bound.includes(paper));
  return [fitting(editions, loose, false), fitting(editions, bound, true)].filter((run) => run.editions.length > 0);
}

function fitting(wished: readonly string[], papers: readonly string[], stitched: boolean): RunWish {
  const editions = EDITIONS.filter((edition) => wished.includes(edition.name) && papers.some((paper) => comesOn(edition, paper)));
  return { editions: editions.map(({ name }) => name), papers: papers.filter((paper) => editions.some((edition) => comesOn(edition, paper))), stitched };
}

/** Whether booklets of that paper come two pages on a sheet too. */
export const canBeStitched = (paper: string): boolean => comesOn(PUBLICATIONS.stitched, paper);

interface Counted {
  readonly langs: readonly string[];
  readonly editions: readonly string[];
  readonly papers: readonly string[];
}

/** Booklets of each size, where the languages are read in so many `directions`. */
export function bookletsOfSize({ langs, editions, papers }: Counted, directions: number): number {
  const copies: Readonly<Record<Edition['needs']['languages'], number>> = { language: langs.length, none: 1, direction: directions };
  return EDITIONS.filter(({ name }) => editions.includes(name))
    .reduce((sum, edition) => sum + copies[edition.needs.languages] * papers.filter((paper) => comesOn(edition, paper)).length, 0);
}

/** In how many directions the languages of an order are read; those of all languages where none is named. Of `ar+fr` the first counts. */
export function directionsOf(locales: LocaleFiles, langs: readonly string[]): number {
  const firsts = langs.length === 0 ? languagesIn(locales) : langs.map((codes) => codes.split('+')[0] ?? codes);
  return new Set(firsts.map((lang) => readAbout(locales, lang).direction)).size;
}

/** Whether an edition is made for each language, and so cannot be made for none. */
export const hasWords = ({ needs }: Edition): boolean => needs.languages === 'language';

/** The editions to choose from: those with words first. */
export const editionsOffered: readonly Edition[] = [...EDITIONS].sort((one, other) => Number(hasWords(other)) - Number(hasWords(one)));

/** Those of them that are booklets. */
export const bookletsOffered = editionsOffered.filter(({ series }) => series === 'booklet');

/** The papers to choose from, small ones last. */
export const papersOffered: readonly string[] = papersOf('full', 'apart', 'half').filter((paper) => EDITIONS.some((edition) => comesOn(edition, paper)));
