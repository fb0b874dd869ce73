import {
  comesOn, copiesOfEditions, EDITION_PAPERS, EDITIONS, languagesIn, loadWords, PAPERS, papersOf, pseudoLanguage, PUBLICATIONS, withPseudoLanguage,
  type AnyPaper, type Binding, type Edition, type EditionCopy, type Words,
} from '../booklet/index.ts';
import { bindingOf, papersToStitch, type BindingOptions } from './binding.ts';
import { localeFiles } from './files.ts';
import { chosen } from './project.ts';
import { languageSetsAsked } from './language-sets.ts';

export interface EditionOptions extends BindingOptions {
  readonly lang?: readonly string[];
  readonly edition?: readonly string[];
  readonly paper?: readonly string[];
}

/** What is wanted of each size. */
export interface Wanted {
  /** In the order they are printed in. */
  readonly copies: readonly EditionCopy[];
  readonly binding: Binding;
  /** All languages there are, whichever were asked for: each booklet lists them. */
  readonly languages: readonly Words[];
}

/** The copies that the options of `make` ask for. Throws where one is not known, or does not go with another. */
export function editionsAsked(options: EditionOptions): Wanted {
  const written = localeFiles('locales');
  // The made-up language is made when it is asked for by name, and by nothing else.
  const asked = options.lang?.flatMap((codes) => codes.split('+')) ?? [];
  const locales = asked.includes(pseudoLanguage(written)) ? withPseudoLanguage(written) : written;
  const known = languagesIn(locales);
  const names = chosen(EDITIONS.map(({ name }) => name), options.edition ?? usualEditions(), 'edition');
  const editions = EDITIONS.filter(({ name }) => names.includes(name));
  const binding = bindingOf(options);
  const papers = chosen(EDITION_PAPERS, options.paper ?? usualPapers(binding), 'paper');
  if (binding) papersToStitch(papers);
  refuseUnprintable(editions, papers);
  const languages = known.map((lang) => loadWords(locales, lang));
  return { languages, binding, copies: copiesOfEditions(names, { papers, languageSets: languageSetsAsked(languages, options.lang), source: sourceOf(languages) }) };
}

const usualEditions = (): readonly string[] => EDITIONS.filter(({ isUsual }) => isUsual).map(({ name }) => name);

const usualPapers = (binding: Binding): readonly AnyPaper[] => (binding ? PUBLICATIONS.stitched.papers : papersOf('full')).filter((paper) => PAPERS[paper].isUsual);

/** Not every edition comes on every paper. Throws where an edition asked for comes on none of the papers, or a paper takes none of the editions. */
function refuseUnprintable(editions: readonly Edition[], papers: readonly string[]): void {
  const edition = editions.find((each) => !papers.some((paper) => comesOn(each, paper)));
  if (edition !== undefined) throw new Error(`--edition ${edition.name} --paper ${papers.join(' ')}: it does not come on that paper; would be right: one of ${edition.papers.join(', ')}`);
  const paper = papers.find((each) => !editions.some((one) => comesOn(one, each)));
  if (paper !== undefined) throw new Error(`--paper ${paper}: none of the editions asked for comes on it; would be right: --edition ${EDITIONS.filter((each) => comesOn(each, paper)).map(({ name }) => name).join(' or ')}`);
}

/** The language that the pictures are described in for those who hear them: that in which the texts are written first. */
function sourceOf(languages: readonly Words[]): Words {
  const source = languages.find(({ about }) => about.source);
  if (!source) throw new Error('locales/: no source language; would be right: "source": true in one about.json');
  return source;
}
