import * as drawing from '../../../draw/index.ts';
import type { Solids } from '../../../model/index.ts';
import { glyphsFrom } from '../../pages/index.ts';
import { PAPERS, type FullPaper } from '../../papers/index.ts';
import { pictureSizes } from '../../picture-sizes.ts';
import { picturePlace } from '../../print/index.ts';
import { packDocumentPages, type PackInput } from '../../workshop/index.ts';
import type { Words } from '../../words/index.ts';
import type { PrintedCopy } from '../copies.ts';
import { workshopPack } from './facts.ts';

/** What a pack tells, whatever its language and paper. */
export type PackContent = Omit<PackInput, 'paper' | 'words' | 'pictures' | 'glyphs' | 'placePicture'>;

/** A pack in one language, one copy a paper. */
export function workshopPackCopies({ content, solids }: { readonly content: PackContent; readonly solids: Solids }, papers: readonly FullPaper[], words: Words): readonly PrintedCopy[] {
  const pictures = content.items.map(({ model }, index) => drawing.finishedPicture(model, solids, index));
  const sizes = pictureSizes(pictures);
  const order = content.items.map(({ model: { item, size }, count }) => `${item}-${size}-x${count}`).join('_');
  return papers.map((paper) => ({
    made: 'printed',
    file: `${order}-${words.lang}${PAPERS[paper].suffix}${workshopPack.ending}`,
    pictures,
    document: () => {
      const { html, css, title, dir } = packDocumentPages({ ...content, paper, words, pictures: sizes, glyphs: glyphsFrom(drawing), placePicture: picturePlace });
      return { id: `pack-${words.lang}-${paper}`, html, css, lang: words.lang, dir, title, paper, contentMark: content.contentMark };
    },
    bound: [],
  }));
}
