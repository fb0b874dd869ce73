import { afterAll, beforeAll, expect, it } from 'vitest';
import { openPrinter } from '../../../src/booklet/print/index.ts';
import type { Printer } from '../../../src/booklet/print/index.ts';
import { samplePictures } from './samples.ts';

let printer: Printer;
beforeAll(async () => { printer = await openPrinter({ langs: ['en'] }); });
afterAll(() => printer.close());

it('pictures that are printed while the others are still to come give the same book', async () => {
  const list = samplePictures(60);
  for (const known of [0, 20, 50, 60]) printer.ahead(list.slice(0, known));
  const book = await printer.pictures(list);
  expect(book).toEqual(await printer.pictures(samplePictures(60)));
  // The sheet that was full was printed once, the other when all were there.
  const again = await printer.pictures(list);
  expect(again.sheets.map((sheet, place) => sheet === book.sheets[place])).toEqual([true, false]);
});

it('what was begun is no sheet of another list', async () => {
  const list = samplePictures(49);
  printer.ahead(list);
  const [first, ...others] = list;
  const turned = [first, ...others.reverse()].flatMap((picture) => picture ?? []);
  const { sheets } = await printer.pictures(turned);
  expect(sheets.flatMap(({ pictures }) => pictures.map(({ id }) => id))).toEqual(turned.map(({ id }) => id));
});
