import { dirname, join } from 'node:path';
import { openPrinter, type Copy, type PictureBook, type PrintedCopy, type Publication } from '../booklet/index.ts';
import type { Picture } from '../draw/index.ts';
import { writeWhole } from './files.ts';
import type { Progress } from './progress.ts';

/** Copies that go to one folder. Their pictures are printed before the first of them is written. */
export interface Batch {
  readonly folder: string;
  readonly copies: readonly Copy[];
}

/** Who hears of the files. */
type Told = Pick<Progress, 'done' | 'line'>;

/**
 * Publishes batch after batch, each made when it is its turn, and tells each file. Where one of the publications is
 * printed, the browser is started before anything is made.
 */
export async function publish(publications: readonly Publication[], batches: Iterable<Batch> | AsyncIterable<Batch>, told: Told): Promise<void> {
  const press = await openPress(publications);
  try {
    for await (const { folder, copies } of batches) {
      for (const copy of copies) if (copy.made === 'printed') await press.bookOf(copy.pictures);
      for (const copy of copies) await publishOne(copy, join(folder, copy.file), press, told);
    }
  } finally {
    await press.close();
  }
}

async function publishOne(copy: Copy, path: string, press: Press, told: Told): Promise<void> {
  if (copy.made === 'printed') await publishPrinted(copy, path, press, told);
  else writeWhole(path, await copy.text());
  if (copy.made === 'written' && copy.isTold) told.line(path);
  if (copy.made === 'printed' || copy.isTold) told.done(path);
}

async function publishPrinted(copy: PrintedCopy, path: string, press: Press, told: Told): Promise<void> {
  const printed = await press.print(copy);
  writeWhole(path, printed);
  told.line(path);
  for (const { file, from } of copy.bound) {
    const bound = join(dirname(path), file);
    writeWhole(bound, await from(printed));
    told.line(bound);
  }
}

/** A printer that prints each set of pictures once. */
interface Press {
  readonly bookOf: (pictures: readonly Picture[]) => Promise<PictureBook>;
  readonly print: (copy: PrintedCopy) => Promise<Uint8Array>;
  readonly close: () => Promise<void>;
}

async function openPress(publications: readonly Publication[]): Promise<Press> {
  const fonts = publications.flatMap(({ needs }) => needs.fonts ?? []);
  if (fonts.length === 0) return noPress;
  const printer = await openPrinter(fonts.includes('all') ? {} : { langs: ['en'] });
  const books = new WeakMap<readonly Picture[], Promise<PictureBook>>();
  const bookOf = (pictures: readonly Picture[]): Promise<PictureBook> => {
    const book = books.get(pictures) ?? printer.pictures(pictures);
    books.set(pictures, book);
    return book;
  };
  return {
    bookOf,
    print: async ({ document, pictures }) => printer.document(document(), await bookOf(pictures)),
    close: () => printer.close(),
  };
}

/** Where nothing is printed no browser is started. */
const noPress: Press = {
  bookOf: () => Promise.reject(new RangeError('a copy is printed of which no publication needs fonts')),
  print: ({ file }) => Promise.reject(new RangeError(`${file} is printed, but no publication needs fonts`)),
  close: () => Promise.resolve(),
};
