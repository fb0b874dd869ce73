import { markingSheets as drawnSheets, sheetWhite, type Picture } from '../../../draw/index.ts';
import type { Model } from '../../../model/index.ts';
import { PAPERS, type FullPaper } from '../../papers/index.ts';
import { sheetDocument } from '../../workshop/index.ts';
import type { PrintedCopy } from '../copies.ts';
import { shortMark } from '../short-mark.ts';
import { markingSheets } from './facts.ts';

/** The sheets of a size, one copy a paper; the mark on every sheet changes whenever a line of the copy does. */
export function markingSheetsCopies({ model, revision }: { readonly model: Model; readonly revision: number }, papers: readonly FullPaper[]): readonly PrintedCopy[] {
  const id = `${model.item}-${model.size}-sheets`;
  return papers.map((paper) => {
    const draw = (mark: string): readonly Picture[] => drawnSheets(model, PAPERS[paper], `${revision} · ${mark}`);
    const contentMark = shortMark(...draw('').map(({ svg }) => svg));
    const pictures = draw(contentMark);
    return {
      made: 'printed',
      file: `${id}${PAPERS[paper].suffix}${markingSheets.ending}`,
      pictures,
      document: () => sheetDocument({ id: `${id}-${paper}`, title: `${model.item} ${model.size}`, paper, pictures, white: sheetWhite, contentMark }),
      bound: [],
    };
  });
}
