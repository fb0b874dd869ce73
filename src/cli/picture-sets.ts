import type { Paper, PictureBook, Printer } from '../booklet/index.ts';
import { picturesFor, type Drawable, type Format, type PageFormat, type Picture } from '../draw/index.ts';
import { loadSolids } from '../model/index.ts';

/** The pictures of one size variant for each format of pages that is wanted; those of A4 and Letter always, its mark is made from them. */
export type PictureSets = Readonly<Record<Format, readonly Picture[]>>;

/** The format in which pictures are drawn for a paper. */
export function formatOf(paper: Paper): PageFormat {
  return paper === 'a5' || paper === 'half-letter' ? 'small' : 'page';
}

/** Draws what the wanted formats need; a format that is not wanted stays empty. */
export async function drawnSets(givens: Omit<Drawable, 'solids'>, wanted: readonly Format[], drawn: (id: string) => void): Promise<PictureSets> {
  const formats = [...new Set<Format>(['page', ...wanted])];
  const made: Partial<PictureSets> = picturesFor({ ...givens, solids: await loadSolids() }, formats, drawn);
  return { page: made.page ?? [], small: made.small ?? [], thumb: made.thumb ?? [] };
}

/** Prints each format's pictures once, for all booklets. */
export async function printedSets(sets: PictureSets, printer: Printer): Promise<Readonly<Record<Format, PictureBook>>> {
  return { page: await printer.pictures(sets.page), small: await printer.pictures(sets.small), thumb: await printer.pictures(sets.thumb) };
}
