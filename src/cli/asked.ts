import { languagesIn, loadWords, PAPERS, type AnyPaper, type Words } from '../booklet/index.ts';
import { localeFiles } from './files.ts';
import { chosen } from './project.ts';

/** The papers asked for, out of those a publication comes on; its usual ones unless some are. Throws where it does not come on one. */
export const papersAsked = <Paper extends AnyPaper>({ papers }: { readonly papers: readonly Paper[] }, asked: readonly string[] | undefined): readonly Paper[] =>
  chosen(papers, asked ?? papers.filter((paper) => PAPERS[paper].isUsual), 'paper');

/** The languages asked for; all unless some are. Throws where one is not known. */
export function languagesAsked(asked: readonly string[] | undefined): readonly Words[] {
  const locales = localeFiles('locales');
  return chosen(languagesIn(locales), asked, 'lang').map((lang) => loadWords(locales, lang));
}
