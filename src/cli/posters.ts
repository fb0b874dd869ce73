import { EDITION_PAPERS, glyphsFrom, overviewPage, picturePlace, pictureSizes, wallPages, type PosterPaper, type PrintDocument, type Words } from '../booklet/index.ts';
import * as drawing from '../draw/index.ts';
import type { Model } from '../model/index.ts';
import type { PictureSets } from './picture-sets.ts';
import { paperEnding } from './printed.ts';
import { contentMark, type Variant } from './record.ts';
import type { Tongues } from './tongues.ts';

export type PosterEdition = 'wall' | 'overview';

/** A poster has no words: one language of each reading direction describes it to those who hear it. */
export interface Poster {
  readonly edition: PosterEdition;
  readonly paper: PosterPaper;
  readonly words: Words;
}

/** The pictures from which each edition is made. */
const posterFormat = { wall: 'small', overview: 'thumb' } as const;
export const formatOfPoster = ({ edition }: Poster): 'small' | 'thumb' => posterFormat[edition];

/** An edition's posters on the papers asked for, one for each reading direction among the languages asked for. */
export function postersOf(edition: PosterEdition, papers: readonly string[], tongues: readonly Tongues[], source: Words): readonly Poster[] {
  const firsts = tongues.map(([first]) => first);
  const ltr = firsts.some(({ about }) => about.direction === 'ltr') ? [source] : [];
  const rtl = firsts.filter(({ about }) => about.direction === 'rtl').slice(0, 1);
  return EDITION_PAPERS[edition].filter((paper) => papers.includes(paper)).flatMap((paper) => [...ltr, ...rtl].map((words) => ({ edition, paper, words })));
}

/** End of a poster's name. */
export function posterEnding({ edition, paper, words }: Poster): string {
  return `${edition}${words.about.direction === 'rtl' ? '-rtl' : ''}${paperEnding(paper)}`;
}

/** The poster as a document to print, pictures still to be laid in. */
export function posterDocument(variant: Variant, variants: readonly Model[], poster: Poster, sets: PictureSets): PrintDocument {
  const { item, model, plan, report } = variant;
  const { edition, paper, words } = poster;
  const mark = contentMark(variant);
  const pages = (edition === 'wall' ? wallPages : overviewPage)({
    model, plan, report, variants,
    pictures: pictureSizes(sets[formatOfPoster(poster)]),
    partScale: drawing.PART_SCALE,
    revision: item.revision,
    contentMark: mark,
    despiteFindings: report.findings.some((finding) => finding.verdict === 'fail'),
    words,
    glyphs: glyphsFrom(drawing),
    placePicture: picturePlace,
  }, paper);
  return {
    id: `${item.name}-${model.size}-${posterEnding(poster)}`,
    html: pages.html, css: pages.css, lang: words.lang, dir: pages.dir, title: pages.title, paper, contentMark: mark,
  };
}
