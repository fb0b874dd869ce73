import { cachedDrawer, partPictures } from '../../../draw/index.ts';
import type { Model, Solids } from '../../../model/index.ts';
import { PAPERS, type FullPaper } from '../../papers/index.ts';
import { pictureSizes } from '../../picture-sizes.ts';
import { picturePlace } from '../../print/index.ts';
import { COUNTED_KINDS, surveyPages } from '../../survey-pages/index.ts';
import type { Words } from '../../words/index.ts';
import type { PrintedCopy } from '../copies.ts';
import { surveySheet } from './facts.ts';

/** The sheets to count by, paper by paper in each language. `model` has every part that is counted: its parts are shown. */
export function surveySheetCopies({ model, solids }: { readonly model: Model; readonly solids: Solids }, papers: readonly FullPaper[], languages: readonly Words[]): readonly PrintedCopy[] {
  const ids = COUNTED_KINDS.map((kind) => `small:${kind}`);
  const pictures = partPictures(model, solids, cachedDrawer()).filter(({ id }) => ids.includes(id));
  const sizes = pictureSizes(pictures);
  return papers.flatMap((paper) => languages.map((words): PrintedCopy => {
    const id = `stock-count-${words.lang}${PAPERS[paper].suffix}`;
    return {
      made: 'printed',
      file: `${id}${surveySheet.ending}`,
      pictures,
      document: () => {
        const { html, css, dir, title } = surveyPages({ paper, words, pictures: sizes, placePicture: picturePlace });
        return { id, html, css, dir, title, lang: words.lang, paper, contentMark: 'stock-count' };
      },
      bound: [],
    };
  }));
}
