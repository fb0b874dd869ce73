import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cachedDrawer, picturesFor, type LineDrawing } from '../../../src/draw/index.ts';
import type { LineDrawer } from '../../../src/draw/picture/index.ts';
import { planeOf, project } from '../../../src/draw/picture/plane.ts';
import { placed } from '../../../src/model/index.ts';
import { bookletPages, type BookletInput } from '../../../src/booklet/pages/index.ts';
import { openPrinter, picturePlace, type Printer } from '../../../src/booklet/print/index.ts';
import { overviewPage, wallPages } from '../../../src/booklet/posters/index.ts';
import { PAPERS } from '../../../src/booklet/papers/index.ts';
import { laidFor, PUBLICATIONS } from '../../../src/booklet/publications/facts.ts';
import { languagesIn, loadWords } from '../../../src/booklet/words/index.ts';
import { overviewPosters, pagedSizes, picturePages, wallPosters, wordPages } from '../../support/chosen.ts';
import { modelOf, reportOf } from '../../support/items.ts';
import { sharedSolids } from '../../support/kernel.ts';
import { cutsOnce, planOnce } from '../../support/plans.ts';
import { localesOnDisk, rackInput } from './rack-booklet.ts';

const drawPart = cachedDrawer();

/** A joint with all its blind openings closed has no more bodies. */
const MOST_OF_A_PART = 5;

/** Nothing but how far the bodies reach on the view plane: pictures of the right size, quickly. A part alone, with what closes its openings, is drawn. */
const outlineOnly: LineDrawer = (bodies, view, apart): LineDrawing => {
  if (bodies.length <= MOST_OF_A_PART) return drawPart(bodies, view, apart);
  const plane = planeOf(view);
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { mesh: { positions }, pose } of bodies) {
    for (let at = 0; at < positions.length; at += 3) {
      const [x, y] = project(plane, placed(pose, [positions[at] ?? 0, positions[at + 1] ?? 0, positions[at + 2] ?? 0]));
      [left, low, right, high] = [Math.min(left, x), Math.min(low, y), Math.max(right, x), Math.max(high, y)];
    }
  }
  return { strokes: [], regions: [], visibleShare: () => 1, bounds: { min: [left, low], max: [right, high] } };
};

const locales = localesOnDisk();
const words = new Map(languagesIn(locales).map((lang) => [lang, loadWords(locales, lang)]));

let printer: Printer;
beforeAll(async () => { printer = await openPrinter(); });
afterAll(() => printer.close());

describe.each(pagedSizes)('every booklet of the $name has room for all it says', ({ name: sizeName, item, size }) => {
  const tried = <Row extends { readonly size: string; readonly paper: string }>(rows: readonly Row[], paper: string): readonly Row[] => rows.filter((row) => row.size === sizeName && row.paper === paper);
  let of: (format: 'page' | 'small' | 'thumb', lang: string) => BookletInput;
  beforeAll(async () => {
    const solids = await sharedSolids();
    const model = modelOf(item, size);
    const report = reportOf(item, model.size);
    const plan = planOnce(model, item.order, report.advice.wall);
    const sets = picturesFor({ model, plan, cuts: await cutsOnce(model), solids }, ['page', 'small', 'thumb'], undefined, outlineOnly);
    const common = { ...rackInput(), model, plan, report, variants: item.sizes.map(({ name }) => modelOf(item, name)) };
    of = (format, lang) => {
      const [first = common.words, ...alongside] = lang.split('+').flatMap((each) => words.get(each) ?? []);
      return { ...common, pictures: sets[format], words: first, alongside };
    };
  });

  it.each(PUBLICATIONS.words.papers)('with and without words, on %s', (paper) => {
    const { format } = PAPERS[paper];
    for (const { lang } of tried(wordPages, paper)) {
      const { pageCount } = bookletPages({ ...of(format, lang), edition: 'words', paper: laidFor(PUBLICATIONS.words, paper) });
      expect([lang, pageCount > 10 && pageCount < 150]).toEqual([lang, true]);
    }
    if (tried(picturePages, paper).length > 0) expect(bookletPages({ ...of(format, 'en'), edition: 'pictures', paper }).pageCount).toBeGreaterThan(10);
  });

  it('in the browser too: nothing is cut off or reaches over its sheet', async () => {
    for (const [lang, edition] of [['en', 'pictures'], ['el', 'words']] as const) {
      const { html, css, dir, title } = bookletPages({ ...of('page', lang), edition, paper: 'a4', placePicture: picturePlace });
      expect(await printer.measure({ id: `${lang} ${edition}`, html, css, lang, dir, title, paper: 'a4', contentMark: '3f9c1a7e' })).toEqual([]);
    }
  });

  it('as posters', () => {
    for (const paper of PUBLICATIONS.wall.papers) for (const { lang } of tried(wallPosters, paper)) expect(wallPages(of('small', lang), paper).pageCount).toBeGreaterThan(10);
    for (const paper of PUBLICATIONS.overview.papers) for (const { lang } of tried(overviewPosters, paper)) expect(overviewPage(of('thumb', lang), paper).pageCount).toBe(1);
  });
});
