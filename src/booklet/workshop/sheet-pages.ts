import { PAPERS } from '../papers/index.ts';
import { picturePlace, type Paper, type PrintDocument } from '../print/index.ts';

/** A picture that fills a sheet but for the white round it. */
interface SheetPicture {
  readonly id: string;
  readonly width: number;
  readonly height: number;
}

/** A set of sheets at true size. */
export interface SheetSet {
  readonly id: string;
  readonly title: string;
  readonly paper: Paper;
  readonly pictures: readonly SheetPicture[];
  /** White round each picture, mm. */
  readonly white: number;
  readonly contentMark: string;
}

/**
 * The document of marking sheets: one picture a page, placed absolutely at its own size, so that the browser scales
 * nothing. It says nothing in any language (`und`): title and alternative texts are names and numerals.
 */
export function sheetDocument({ id, title, paper, pictures, white, contentMark }: SheetSet): PrintDocument {
  const { width, height } = PAPERS[paper];
  return {
    id, title, paper, contentMark,
    lang: 'und',
    dir: 'ltr',
    css: `@page { margin: 0 }
.page { position: relative; width: ${width}mm; height: ${height}mm; overflow: hidden; break-after: page }
.page > svg { position: absolute; left: ${white}mm; top: ${white}mm }`,
    html: pictures.map((picture, index) =>
      `<section class="page" data-page="${index + 1}">${picturePlace({ ...picture, alt: `${title} ${index + 1}/${pictures.length}` })}</section>`).join('\n'),
  };
}
