import { afterAll, beforeAll, expect, it } from 'vitest';
import { changePages, openPrinter, picturePlace, type Printer } from '../../../src/booklet/index.ts';
import { printedCuts } from '../../support/chosen.ts';
import { changeInput } from './change.ts';

let printer: Printer;
beforeAll(async () => { printer = await openPrinter(); });
afterAll(() => printer.close());

it.each([...printedCuts, { lang: 'ur', paper: 'a4' }, { lang: 'my', paper: 'letter' }] as const)('printed in $lang on $paper, nothing of what changed is cut off, outside its sheet or in a foreign face', async ({ lang, paper }) => {
  const pages = changePages({ ...changeInput({ lang, paper }), placePicture: picturePlace });
  expect(await printer.measure({ ...pages, id: `changes-${lang}`, lang, paper, contentMark: 'x' })).toEqual([]);
});
