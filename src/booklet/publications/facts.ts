/** What can be published. Nothing here draws, prints or loads a page: the command's help and the workbench page read it. */
import type { Format } from '../../draw/index.ts';
import { PAPERS, type AnyPaper } from '../papers/index.ts';
import { changeSheets } from './change-sheets/facts.ts';
import { cutPlan } from './cut-plan/facts.ts';
import { markingSheets } from './marking-sheets/facts.ts';
import { overview } from './overview/facts.ts';
import { phoneGuide } from './phone-guide/facts.ts';
import { pictures } from './pictures/facts.ts';
import { stitched } from './stitched/facts.ts';
import { surveySheet } from './survey-sheet/facts.ts';
import type { Edition, Publication } from './types.ts';
import { wall } from './wall/facts.ts';
import { words } from './words/facts.ts';
import { workshopPack } from './workshop-pack/facts.ts';

/** All publications by their names; editions in the order in which they are offered. */
export const PUBLICATIONS = {
  pictures, words, wall, overview, stitched,
  'cut-plan': cutPlan,
  'survey-sheet': surveySheet,
  'marking-sheets': markingSheets,
  'workshop-pack': workshopPack,
  'change-sheets': changeSheets,
  'phone-guide': phoneGuide,
} as const satisfies Readonly<Record<string, Publication>>;

export type PublicationName = keyof typeof PUBLICATIONS;

/** The publications that are editions of a size. */
export type EditionName = { [Name in PublicationName]: (typeof PUBLICATIONS)[Name] extends Edition ? Name : never }[PublicationName];

export const EDITIONS: readonly (Edition & { readonly name: EditionName })[] = Object.values(PUBLICATIONS).filter((each) => 'series' in each);

/** The editions that are booklets. */
export type BookletEdition = { [Name in EditionName]: (typeof PUBLICATIONS)[Name]['series'] extends 'booklet' ? Name : never }[EditionName];

/** The papers on which an edition comes, all editions together. */
export const EDITION_PAPERS: readonly AnyPaper[] = [...new Set(EDITIONS.flatMap(({ papers }) => papers))];

export const comesOn = ({ papers }: Publication, paper: string): boolean => papers.some((each) => each === paper);

/** Which set of a size's pictures an edition is laid out with on a paper. */
export const formatOn = ({ needs: { pictures } }: Pick<Edition, 'needs'>, paper: AnyPaper): Format => (pictures === 'of-paper' ? PAPERS[paper].format : pictures);

/** What an edition's pages on a paper are laid out for. */
export const laidFor = <Paper extends AnyPaper>({ layout }: Pick<Edition, 'layout' | 'series'>, paper: Paper): Paper | 'common' => (layout === 'common' && PAPERS[paper].sort === 'full' ? 'common' : paper);
