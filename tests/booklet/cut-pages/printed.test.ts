import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutPages, openPrinter, picturePlace, surveyPages, type Paper, type PictureBook, type PrintDocument, type Printer } from '../../../src/booklet/index.ts';
import { cutPlanPictures, pictureId } from '../../../src/draw/index.ts';
import { loadWords } from '../../../src/booklet/words/index.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';
import { readPdf } from '../print/readPdf.ts';
import { printedCuts } from '../../support/chosen.ts';
import { cutInput, damagedOrder, smallPictures } from './orders.ts';

let printer: Printer;
let book: PictureBook;
beforeAll(async () => {
  printer = await openPrinter();
  const small = smallPictures.map(({ of, width, height }) => ({ id: pictureId(of), width, height, svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><path d="M1 1H${width - 1}" stroke="#000"/></svg>` }));
  book = await printer.pictures([...cutPlanPictures(damagedOrder), ...small]);
});
afterAll(() => printer.close());

const plan = (lang: string, paper: Paper): PrintDocument => {
  const pages = cutPages({ ...cutInput(damagedOrder, { lang, paper }), placePicture: picturePlace });
  return { ...pages, id: `cut-${lang}`, lang, paper, contentMark: 'x' };
};
const survey = (lang: string, paper: Paper): PrintDocument => {
  const pages = surveyPages({ paper, words: loadWords(localesOnDisk(), lang), pictures: smallPictures, placePicture: picturePlace });
  return { ...pages, id: `count-${lang}`, lang, paper, contentMark: 'x' };
};

describe.each(printedCuts)('printed in $lang on $paper', ({ lang, paper }) => {
  it('nothing is cut off, outside its sheet or in a foreign face', async () => {
    expect(await printer.measure(plan(lang, paper))).toEqual([]);
    expect(await printer.measure(survey(lang, paper))).toEqual([]);
  });

  it('there are as many pages as told', async () => {
    expect((await readPdf(await printer.document(plan(lang, paper), book))).getPageCount()).toBe(4);
    expect((await readPdf(await printer.document(survey(lang, paper), book))).getPageCount()).toBe(3);
  });
});
