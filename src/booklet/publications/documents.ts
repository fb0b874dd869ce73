/** How the document of each publication is made. */
import { papersOf } from '../papers/index.ts';
import type { Copy } from './copies.ts';
import { changeSheetsCopies } from './change-sheets/document.ts';
import { cutPlanCopies } from './cut-plan/document.ts';
import type { Asked, CopiesOfEdition, EditionCopy } from './edition-copies.ts';
import { EDITIONS, type EditionName, type PublicationName } from './facts.ts';
import { markingSheetsCopies } from './marking-sheets/document.ts';
import { overviewCopies } from './overview/document.ts';
import { picturesCopies } from './pictures/document.ts';
import { surveySheetCopies } from './survey-sheet/document.ts';
import type { Edition } from './types.ts';
import { wallCopies } from './wall/document.ts';
import { wordsCopies } from './words/document.ts';
import { workshopPackCopies } from './workshop-pack/document.ts';

const EDITION_COPIES: Readonly<Record<EditionName, CopiesOfEdition>> = { pictures: picturesCopies, words: wordsCopies, wall: wallCopies, overview: overviewCopies };

/** The copies of all others; but stitched ones come of the editions' own copies, and the phone guide is made in `guide`. */
export const COPIES = {
  'cut-plan': cutPlanCopies,
  'survey-sheet': surveySheetCopies,
  'marking-sheets': markingSheetsCopies,
  'workshop-pack': workshopPackCopies,
  'change-sheets': changeSheetsCopies,
} as const satisfies Readonly<Record<Exclude<PublicationName, EditionName | 'stitched' | 'phone-guide'>, (...made: never) => readonly Copy[]>>;

/** The copies of the editions asked for in the order in which they are printed: series by series, and in each paper by paper; those that share their pages with the first of their papers. */
export function copiesOfEditions(editions: readonly EditionName[], asked: Asked): readonly EditionCopy[] {
  const wanted = EDITIONS.filter(({ name }) => editions.includes(name));
  const seriesOf = ({ name, series }: Edition): string => (series === 'alone' ? name : series);
  const papers = papersOf('full', 'half', 'apart');
  const first = papersOf('full').findIndex((paper) => asked.papers.includes(paper));
  const turnOf = ({ paper, laidFor }: EditionCopy): number => (laidFor === 'common' ? first : papers.indexOf(paper));
  return [...new Set(wanted.map(seriesOf))].flatMap((series) => wanted.filter((edition) => seriesOf(edition) === series)
    .flatMap(({ name }) => EDITION_COPIES[name](asked))
    .sort((one, other) => turnOf(one) - turnOf(other)));
}
