import * as drawing from '../../draw/index.ts';
import type { Format, Picture } from '../../draw/index.ts';
import type { BookletInput, BookletPages } from '../pages/index.ts';
import { common, PAPERS, type AnyPaper } from '../papers/index.ts';
import { pictureSizes } from '../picture-sizes.ts';
import { picturePlace } from '../print/index.ts';
import type { Stitching } from '../stitch/index.ts';
import type { Words } from '../words/index.ts';
import type { PrintedCopy, Sharing } from './copies.ts';
import { formatOn, laidFor, type EditionName } from './facts.ts';
import { stitchedCopies } from './stitched/document.ts';
import { nameOf, type LanguageSet } from './language-set.ts';
import { glyphPrints, printedGlyphs } from './printed-glyphs.ts';
import type { Edition } from './types.ts';

/** One size of an item, worked through and drawn. */
export interface SizeToPublish extends Pick<BookletInput, 'model' | 'plan' | 'report' | 'variants' | 'revision' | 'contentMark' | 'replaces'> {
  /** A set for each format that its copies take. */
  readonly pictures: Readonly<Record<Format, readonly Picture[]>>;
  /** All languages there are, whichever were asked for. */
  readonly languages: readonly Words[];
}

/** What an edition's pages are made from, whatever the edition. */
export type EditionInput = Omit<BookletInput, 'edition' | 'paper' | 'alongside' | 'languages'>;

/** The pages of an edition, on a paper it comes on, in some languages out of all. */
export type PagesOf<Paper extends AnyPaper> = (input: EditionInput, paper: Paper, languageSet: LanguageSet, all: readonly Words[]) => BookletPages;

/** What was asked for. */
export interface Asked {
  readonly papers: readonly string[];
  readonly languageSets: readonly LanguageSet[];
  /** The language that texts are written in first. */
  readonly source: Words;
}

/** How booklets are bound besides being printed page by page; null where they are not. */
export type Binding = Pick<Stitching, 'mostSheets' | 'thickness'> | null;

type NamedEdition = Edition & { readonly name: EditionName };

/** A copy of an edition that is wanted, of whichever size. */
export interface EditionCopy {
  readonly edition: EditionName;
  readonly paper: AnyPaper;
  readonly format: Format;
  /** What its pages are laid out for. */
  readonly laidFor: AnyPaper | 'common';
  readonly of: (size: SizeToPublish, binding: Binding) => PrintedCopy;
}

/** The copies of an edition that are wanted, on those of its papers that were asked for. */
export type CopiesOfEdition = (asked: Asked) => readonly EditionCopy[];

/** The copies of an edition as its pages make it; those that share their pages come one after the other. */
export const editionCopies = <Paper extends AnyPaper>(edition: Omit<NamedEdition, 'papers'> & { readonly papers: readonly Paper[] }, pagesOf: PagesOf<Paper>, asked: Asked): readonly EditionCopy[] => {
  const papers = edition.papers.filter((paper) => asked.papers.includes(paper));
  const layouts = [...new Set(papers.map((paper) => laidFor(edition, paper)))].map((layout) => papers.filter((paper) => laidFor(edition, paper) === layout));
  return layouts.flatMap((sharing) => languageSetsOf(edition, asked).flatMap((languageSet) => {
    const pages = sharedPages((size, format, paper: Paper) => pagesOf(inputOf(size, format, languageSet), paper, languageSet, size.languages),
      (size) => sharing.map((paper) => ({ id: idOf(edition, size, languageSet, paper), paper })));
    return sharing.map((paper) => editionCopy(edition, paper, languageSet, pages));
  }));
};

/** The pages of a size that several copies share, and what tells these copies. */
interface SharedPages<Paper extends AnyPaper> {
  readonly of: (size: SizeToPublish, format: Format, paper: Paper) => BookletPages;
  readonly sharing: (size: SizeToPublish) => Sharing | null;
}

/** Pages are made for the first copy of a size that asks, and forgotten when the last has asked. */
function sharedPages<Paper extends AnyPaper>(make: SharedPages<Paper>['of'], copiesOf: (size: SizeToPublish) => Sharing['copies']): SharedPages<Paper> {
  const made = new WeakMap<SizeToPublish, { readonly pages: BookletPages; readonly left: number }>();
  const sharings = new WeakMap<SizeToPublish, Sharing>();
  return {
    of: (size, format, paper) => {
      const { pages, left } = made.get(size) ?? { pages: make(size, format, paper), left: copiesOf(size).length };
      if (left > 1) made.set(size, { pages, left: left - 1 });
      else made.delete(size);
      return pages;
    },
    sharing: (size) => {
      const sharing = sharings.get(size) ?? { copies: copiesOf(size) };
      sharings.set(size, sharing);
      return sharing.copies.length > 1 ? sharing : null;
    },
  };
}

function editionCopy<Paper extends AnyPaper>(edition: Omit<NamedEdition, 'papers'>, paper: Paper, languageSet: LanguageSet, pages: SharedPages<Paper>): EditionCopy {
  const format = formatOn(edition, paper);
  const layout = laidFor(edition, paper);
  const [{ lang, about: { direction } }] = languageSet;
  return {
    edition: edition.name, paper, format, laidFor: layout,
    of: (size, binding) => {
      const { contentMark, pictures } = size;
      const id = idOf(edition, size, languageSet, paper);
      return {
        made: 'printed',
        file: `${id}${edition.ending}`,
        pictures: pictures[format],
        glyphs: glyphPrints(),
        sharing: pages.sharing(size),
        document: () => {
          const { html, css, dir, title } = pages.of(size, format, paper);
          return { id, html, css, lang, dir, title, paper, field: layout === 'common' ? common : null, contentMark };
        },
        bound: binding !== null && edition.series === 'booklet' ? stitchedCopies(id, paper, { ...binding, dir: direction }) : [],
      };
    },
  };
}

function inputOf({ model, plan, report, variants, revision, contentMark, replaces = null, pictures }: SizeToPublish, format: Format, [words]: LanguageSet): EditionInput {
  return {
    model, plan, report, variants, revision, contentMark, replaces, words,
    pictures: pictureSizes(pictures[format]),
    partScale: format === 'thumb' ? drawing.PART_SCALE : drawing.partScale(format),
    despiteFindings: report.findings.some(({ verdict }) => verdict === 'fail'),
    glyphs: printedGlyphs,
    placePicture: picturePlace,
  };
}

/** The languages of each copy on one paper; where the copy is free of words, those that describe it to who hears it. */
function languageSetsOf({ needs: { languages } }: Pick<Edition, 'needs'>, { languageSets, source }: Asked): readonly LanguageSet[] {
  switch (languages) {
    case 'language': return languageSets;
    case 'none': return [[source]];
    case 'direction': {
      const firsts = languageSets.map(([first]) => first);
      const fromLeft = firsts.some(({ about }) => about.direction === 'ltr') ? [source] : [];
      return [...fromLeft, ...firsts.filter(({ about }) => about.direction === 'rtl').slice(0, 1)].map((words): LanguageSet => [words]);
    }
  }
}

/** Tells a copy from all others. */
const idOf = (edition: Pick<NamedEdition, 'name' | 'needs'>, { model }: SizeToPublish, languageSet: LanguageSet, paper: AnyPaper): string =>
  `${model.item}-${model.size}-${copyName(edition, languageSet)}${PAPERS[paper].suffix}`;

/** A copy's name beside those of its size. */
function copyName({ name, needs: { languages } }: Pick<NamedEdition, 'name' | 'needs'>, languageSet: LanguageSet): string {
  switch (languages) {
    case 'language': return `${nameOf(languageSet)}-${name}`;
    case 'none': return name;
    case 'direction': return languageSet[0].about.direction === 'rtl' ? `${name}-rtl` : name;
  }
}
