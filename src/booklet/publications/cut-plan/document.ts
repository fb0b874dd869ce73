import type { CutOrder } from '../../../cut/index.ts';
import * as drawing from '../../../draw/index.ts';
import { cutPages } from '../../cut-pages/index.ts';
import { glyphsFrom } from '../../pages/index.ts';
import { PAPERS, type FullPaper } from '../../papers/index.ts';
import { pictureSizes } from '../../picture-sizes.ts';
import { picturePlace } from '../../print/index.ts';
import type { Words } from '../../words/index.ts';
import type { PrintedCopy } from '../copies.ts';
import { cutPlan } from './facts.ts';

/** The cut plans of an order, paper by paper in each language. `contentMark` is a short hash of the plan. */
export function cutPlanCopies({ order, contentMark }: { readonly order: CutOrder; readonly contentMark: string }, papers: readonly FullPaper[], languages: readonly Words[]): readonly PrintedCopy[] {
  const pictures = drawing.cutPlanPictures(order);
  const sizes = pictureSizes(pictures);
  return papers.flatMap((paper) => languages.map((words): PrintedCopy => ({
    made: 'printed',
    file: `cut-${words.lang}${PAPERS[paper].suffix}${cutPlan.ending}`,
    pictures,
    document: () => {
      const { html, css, dir, title } = cutPages({ order, paper, words, pictures: sizes, placePicture: picturePlace, glyphs: glyphsFrom(drawing), contentMark });
      return { id: `cut-${words.lang}-${paper}`, html, css, dir, title, lang: words.lang, paper, contentMark };
    },
    bound: [],
  })));
}
