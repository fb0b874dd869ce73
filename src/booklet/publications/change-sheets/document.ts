import type { PictureOf } from '../../../draw/index.ts';
import { changePages, type ChangePagesInput } from '../../change-pages/index.ts';
import { PAPERS, type FullPaper } from '../../papers/index.ts';
import { picturePlace, type PrintPicture } from '../../print/index.ts';
import type { Words } from '../../words/index.ts';
import type { PrintedCopy } from '../copies.ts';
import { changeSheets } from './facts.ts';

/** A picture as it was and as it is; null where there was none, or it is kept no more. */
export interface ChangedPicture {
  readonly of: PictureOf;
  readonly before: PrintPicture | null;
  readonly after: PrintPicture;
}

/** What a change did to a size, whatever the language and paper it is told in. */
export type SizeChange = Omit<ChangePagesInput, 'paper' | 'words' | 'pairs' | 'placePicture'> & { readonly pictures: readonly ChangedPicture[] };

/** What changed of a size, paper by paper in each language. */
export function changeSheetsCopies({ pictures, ...change }: SizeChange, papers: readonly FullPaper[], languages: readonly Words[]): readonly PrintedCopy[] {
  // Both are printed in one book: there the earlier one has a name of its own.
  const pairs = pictures.map(({ of, before, after }) => ({ of, before: before === null ? null : { ...before, id: `before:${before.id}` }, after }));
  const printed = pairs.flatMap(({ before, after }) => [...(before === null ? [] : [before]), after]);
  return papers.flatMap((paper) => languages.map((words): PrintedCopy => {
    const id = `${change.item}-${change.size}-changes-${words.lang}${PAPERS[paper].suffix}`;
    return {
      made: 'printed',
      file: `${id}${changeSheets.ending}`,
      pictures: printed,
      document: () => {
        const { html, css, dir, title } = changePages({ ...change, paper, words, pairs, placePicture: picturePlace });
        return { id, html, css, dir, title, lang: words.lang, paper, contentMark: change.contentMark };
      },
      bound: [],
    };
  }));
}
