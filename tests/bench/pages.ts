import { fileURLToPath } from 'node:url';
import { chooseBrowser, glyphPrints } from '../../src/booklet/index.ts';
import { openPrinter } from '../../src/booklet/print/index.ts';
import { launch } from '../../src/booklet/print/launch.ts';
import { readPlaceLabel } from '../../src/booklet/print/place.ts';
import { prepareTab, printTab, showDocument } from '../../src/booklet/print/tab.ts';
import type { PrintDocument } from '../../src/booklet/print/types.ts';
import type { Picture } from '../../src/draw/index.ts';
import { PRINTABLE_LANGS } from '../../src/booklet/print/fonts.ts';
import { editionsAsked } from '../../src/cli/editions-asked.ts';
import { sizeToPublish } from '../../src/cli/size-batches.ts';
import { rackVariant } from '../guide/made.ts';
import { rackModel, sizes } from '../support/rack.ts';
import type { Row } from './rows.ts';

const RUNS = 3;
const WAIT = 600_000;

/** What a page costs as we print it, pictures once and words for each language, and as the same browser prints whole pages with their pictures in them. */
export async function pageRows(): Promise<readonly Row[]> {
  process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
  const variant = await rackVariant('low');
  const { copies, languages } = editionsAsked({ lang: ['en'], edition: ['words'], paper: ['a4'] });
  const size = sizeToPublish(variant, sizes.map(rackModel), { pictures: { page: variant.pictures, small: [], thumb: [] }, languages });
  const documents = copies.map((copy) => copy.of(size, null).document());
  const [doc] = documents;
  if (doc === undefined) throw new Error('no document');
  const pages = (doc.html.match(/data-page="/g) ?? []).length;
  const ours = (await withPrinter(doc, variant.pictures)) / pages;
  const plain = (await plainly(doc, variant.pictures)) / pages;
  return [
    { work: `a page, set, printed and finished (${pages} pages, pictures printed before)`, figure: ours, unit: 'ms', goal: 4 },
    { work: 'a page as the same browser prints it whole, nothing finished', figure: plain, unit: 'ms', goal: null },
    { work: 'ours over the browser’s', figure: ours / plain, unit: '×', goal: null },
  ];
}

/** The least of a few runs, ms. */
async function least(work: () => Promise<unknown>): Promise<number> {
  const times: number[] = [];
  for (let run = 0; run < RUNS; run += 1) {
    const begun = performance.now();
    await work();
    times.push(performance.now() - begun);
  }
  return Math.min(...times);
}

async function withPrinter(doc: PrintDocument, pictures: readonly Picture[]): Promise<number> {
  const printer = await openPrinter();
  try {
    const book = await printer.pictures([...pictures, ...glyphPrints()]);
    return await least(() => printer.document(doc, book));
  } finally {
    await printer.close();
  }
}

async function plainly(doc: PrintDocument, pictures: readonly Picture[]): Promise<number> {
  const running = await launch(await chooseBrowser(), WAIT);
  try {
    const tab = await running.browser.newPage();
    await prepareTab(tab, PRINTABLE_LANGS);
    const whole = { ...doc, html: withPictures(doc.html, pictures) };
    return await least(async () => {
      await showDocument(tab, whole, PRINTABLE_LANGS);
      await printTab(tab, 'words', WAIT);
    });
  } finally {
    await running.end();
  }
}

/** The pictures and pictograms themselves in their places, of the places' sizes. */
function withPictures(html: string, pictures: readonly Picture[]): string {
  const drawn = new Map([...pictures, ...glyphPrints()].map(({ id, svg }) => [id, svg]));
  return html.replace(/<svg class="(?:picture-place|glyph)"[^]*?<\/svg>/g, (place) => {
    const [, label = ''] = /aria-label="([^"]*)"/.exec(place) ?? [];
    const [size = ''] = /width="[^"]*" height="[^"]*"/.exec(place) ?? [];
    return drawn.get(readPlaceLabel(label)?.id ?? '')?.replace(/width="[^"]*" height="[^"]*"/, size) ?? place;
  });
}
