import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bookletPages, type BookletInput } from '../../../src/booklet/pages/index.ts';
import { common } from '../../../src/booklet/papers/index.ts';
import { openPrinter, picturePlace, type PageFault, type Printer } from '../../../src/booklet/print/index.ts';
import { languagesIn } from '../../../src/booklet/words/index.ts';
import { measuredAlone, measuredTogether } from '../../support/chosen.ts';
import { madeFurniture } from './furniture-booklet.ts';
import { localesOnDisk, rackInput } from './rack-booklet.ts';

/** The item with the most kinds of pages, and the one all others are like; each worked through once, in one size. */
let bed: ReturnType<typeof madeFurniture>;
let rack: ReturnType<typeof madeFurniture>;
let printer: Printer;
const files = localesOnDisk();

beforeAll(async () => {
  const { model, plan, report, variants, pictures } = rackInput();
  rack = { model, plan, report, variants, pictures };
  bed = madeFurniture('bed');
  printer = await openPrinter();
});
afterAll(() => printer.close());

async function faultsOf(lang: string, made: Partial<BookletInput>): Promise<readonly PageFault[]> {
  const words = rackInputWords(lang);
  const { html, css, dir, title } = bookletPages({ ...words, ...made, paper: 'common', placePicture: picturePlace });
  return printer.measure({ id: lang, html, css, lang: words.words.lang, dir, title, paper: 'a4', field: common, contentMark: 'm' });
}

const inputs = new Map<string, BookletInput>();
/** The rack's booklet in a language; only its words are of use to other items. */
function rackInputWords(lang: string): BookletInput {
  const input = inputs.get(lang) ?? rackInput({ lang, files });
  inputs.set(lang, input);
  return { ...input, languages: languagesIn(files).map((each) => JSON.parse(files[`${each}/about.json`] ?? '') as { name: string }).map(({ name }) => name) };
}

// Nothing cut off, outside its sheet, on other letters or a picture, or in a face that is not ours.
describe('no text is clipped, too wide or too high', () => {
  it.each(measuredAlone)('in $lang, $item', async ({ lang, item }) => {
    expect(await (item === 'rack' ? faultsOf(lang, rack) : faultsOf(lang, bed))).toEqual([]);
  });

  // Two directions; one language of each three that need the most room for lines, width and both.
  it.each(measuredTogether)('in $lang side by side, $item', async ({ lang, item }) => {
    expect(await (item === 'rack' ? faultsOf(lang, rack) : faultsOf(lang, { ...bed, despiteFindings: true }))).toEqual([]);
  });
});
