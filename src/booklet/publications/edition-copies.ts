import * as drawing from '../../draw/index.ts';
import type { Format, Picture } from '../../draw/index.ts';
import { glyphsFrom, type BookletInput, type BookletPages } from '../pages/index.ts';
import { PAPERS, type AnyPaper } from '../papers/index.ts';
import { pictureSizes } from '../picture-sizes.ts';
import { picturePlace } from '../print/index.ts';
import type { Stitching } from '../stitch/index.ts';
import type { Words } from '../words/index.ts';
import type { PrintedCopy } from './copies.ts';
import { formatOn, type EditionName } from './facts.ts';
import { stitchedCopies } from './stitched/document.ts';
import { nameOf, type Tongues } from './tongues.ts';
import type { Edition } from './types.ts';

/** One size of an item, worked through and drawn. */
export interface SizeToPublish extends Pick<BookletInput, 'model' | 'plan' | 'report' | 'variants' | 'revision' | 'contentMark'> {
  /** A set for each format that its copies take. */
  readonly pictures: Readonly<Record<Format, readonly Picture[]>>;
  /** All languages there are, whichever were asked for. */
  readonly languages: readonly Words[];
}

/** What an edition's pages are made from, whatever the edition. */
export type EditionInput = Omit<BookletInput, 'edition' | 'paper' | 'alongside' | 'languages'>;

/** The pages of an edition, on a paper it comes on, in some languages out of all. */
export type PagesOf<Paper extends AnyPaper> = (input: EditionInput, paper: Paper, tongues: Tongues, all: readonly Words[]) => BookletPages;

/** What was asked for. */
export interface Asked {
  readonly papers: readonly string[];
  readonly tongues: readonly Tongues[];
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
  readonly of: (size: SizeToPublish, binding: Binding) => PrintedCopy;
}

/** The copies of an edition that are wanted, on those of its papers that were asked for. */
export type CopiesOfEdition = (asked: Asked) => readonly EditionCopy[];

/** The copies of an edition as its pages make it. */
export const editionCopies = <Paper extends AnyPaper>(edition: Omit<NamedEdition, 'papers'> & { readonly papers: readonly Paper[] }, pagesOf: PagesOf<Paper>, asked: Asked): readonly EditionCopy[] =>
  edition.papers.filter((paper) => asked.papers.includes(paper))
    .flatMap((paper) => tonguesOf(edition, asked).map((tongues) => editionCopy(edition, paper, tongues, pagesOf)));

function editionCopy<Paper extends AnyPaper>(edition: NamedEdition, paper: Paper, tongues: Tongues, pagesOf: PagesOf<Paper>): EditionCopy {
  const format = formatOn(edition, paper);
  const [{ lang, about: { direction } }] = tongues;
  return {
    edition: edition.name, paper, format,
    of: (size, binding) => {
      const { model, contentMark, languages, pictures } = size;
      const id = `${model.item}-${model.size}-${copyName(edition, tongues)}${PAPERS[paper].suffix}`;
      return {
        made: 'printed',
        file: `${id}${edition.ending}`,
        pictures: pictures[format],
        document: () => {
          const { html, css, dir, title } = pagesOf(inputOf(size, format, tongues), paper, tongues, languages);
          return { id, html, css, lang, dir, title, paper, contentMark };
        },
        bound: binding !== null && edition.series === 'booklet' ? stitchedCopies(id, paper, { ...binding, dir: direction }) : [],
      };
    },
  };
}

function inputOf({ model, plan, report, variants, revision, contentMark, pictures }: SizeToPublish, format: Format, [words]: Tongues): EditionInput {
  return {
    model, plan, report, variants, revision, contentMark, words,
    pictures: pictureSizes(pictures[format]),
    partScale: format === 'thumb' ? drawing.PART_SCALE : drawing.partScale(format),
    despiteFindings: report.findings.some(({ verdict }) => verdict === 'fail'),
    glyphs: glyphsFrom(drawing),
    placePicture: picturePlace,
  };
}

/** The languages of each copy on one paper; where the copy is free of words, those that describe it to who hears it. */
function tonguesOf({ needs: { languages } }: Edition, { tongues, source }: Asked): readonly Tongues[] {
  switch (languages) {
    case 'language': return tongues;
    case 'none': return [[source]];
    case 'direction': {
      const firsts = tongues.map(([first]) => first);
      const fromLeft = firsts.some(({ about }) => about.direction === 'ltr') ? [source] : [];
      return [...fromLeft, ...firsts.filter(({ about }) => about.direction === 'rtl').slice(0, 1)].map((words): Tongues => [words]);
    }
  }
}

/** A copy's name beside those of its size. */
function copyName({ name, needs: { languages } }: Edition, tongues: Tongues): string {
  switch (languages) {
    case 'language': return `${nameOf(tongues)}-${name}`;
    case 'none': return name;
    case 'direction': return tongues[0].about.direction === 'rtl' ? `${name}-rtl` : name;
  }
}
