import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bookletPages } from '../../../src/booklet/pages/index.ts';
import { openPrinter, picturePlace, type PictureBook, type Printer } from '../../../src/booklet/print/index.ts';
import { cachedDrawer, signOfCaution, pictogram, stepPictures, type Picture } from '../../../src/draw/index.ts';
import type { Action } from '../../../src/plan/index.ts';
import { luminanceContrast } from '../../draw/pictograms/colour.ts';
import { cutsOnce, planOnce } from '../../support/plans.ts';
import { rackModel, solids } from '../../support/rack.ts';
import { sampled } from '../../support/samples.ts';
import { rackInput, rackPlan } from '../pages/rack-booklet.ts';
import { hasPoppler } from '../print/poppler.ts';
import { blackShare, monoPage, plateaus, type MonoPage } from './render.ts';

/**
 * Least difference of two tints that stand side by side, and of a tint from white, in grey levels of 255. A 300 dpi mono
 * printer that screens at 50 lines an inch has cells of 6 × 6 dots, 37 levels 7 apart (C); three of them are kept free.
 */
const APART = 20;
/** ISO/IEC Guide 37 (CHECKS "Drawings and signs", R): luminance contrast of text and signs against their ground. */
const CONTRAST = 0.7;
/** The smallest area that counts as a tint: 4 × 4 mm at 300 dpi. */
const AREA = 2200;

const hex = (level: number): string => `#${level.toString(16).padStart(2, '0').repeat(3)}`;

/** Steps with new parts, cut-off corners, a section, a sleeve, drilling; by the first step of the action. */
const steps: readonly Action[] = ['cut-tubes', 'punch-holes', 'cut-notches', 'half-cut', 'lay-frame', 'wrap-side', 'turn-item', 'mark-posts', 'slide-on'];
/** One of them is looked at for more than its tints. */
const shown: readonly Action[] = ['lay-frame', ...sampled(steps.filter((action) => action !== 'lay-frame'), 'mono steps', 3)];

let printer: Printer;
let book: PictureBook;
let pictures: ReadonlyMap<Action, readonly Picture[]>;

beforeAll(async () => {
  printer = await openPrinter();
  const model = rackModel('standard');
  const draw = cachedDrawer();
  const plan = planOnce(model, []);
  const cuts = await cutsOnce(model);
  pictures = new Map(shown.map((action) => {
    const step = plan.steps.find((each) => each.action === action);
    if (!step) throw new Error(`no step ${action}`);
    return [action, stepPictures({ model, plan, cuts, solids, draw }, step)];
  }));
  book = await printer.pictures([...pictures.values()].flat());
});
afterAll(() => printer.close());

/** One page with this in its body. */
async function printed(html: string): Promise<Uint8Array> {
  return printer.document({ id: 'mono', html, css: '@page { margin: 10mm } svg { display: block }', lang: 'en', dir: 'ltr', title: 'Mono', paper: 'a4', contentMark: 'm' }, book);
}

const sign = (svg: string, width = 48): string => `<svg role="img" aria-label="x" width="${width}mm" height="48mm" viewBox="0 0 ${width} 48">${svg}</svg>`;

/** What stands side by side is told apart, and from white. */
function expectApart(page: MonoPage, least = AREA): readonly number[] {
  const tints = plateaus(page, least);
  expect(tints).toContain(255);
  tints.slice(1).forEach((level, index) => { expect([level - (tints[index] ?? 0), tints]).toSatisfy(([by]: [number]) => by >= APART); });
  return tints;
}

describe.skipIf(!hasPoppler)('on a mono printer of 300 dpi', () => {
  it.each(shown)('the tints of the step %s stay apart from one another and from white', async (action) => {
    for (const { id, width, height } of pictures.get(action) ?? []) {
      const page = monoPage(await printed(picturePlace({ id, width, height, alt: id })), 1, 'gray');
      const tints = expectApart(page);
      // Black text and lines on every tint.
      for (const level of tints.filter((each) => each > 0)) expect(luminanceContrast(hex(level), '#000')).toBeGreaterThanOrEqual(CONTRAST);
    }
  });

  it('new parts are tinted, and the tint stays between white and black when it is dithered', async () => {
    const [picture] = pictures.get('lay-frame') ?? [];
    if (!picture) throw new Error('no picture');
    const pdf = await printed(picturePlace({ ...picture, alt: 'x' }));
    const [grey, dithered] = [monoPage(pdf, 1, 'gray'), monoPage(pdf, 1, 'mono')];
    const [tint = NaN] = plateaus(grey, AREA).filter((level) => level > 20 && level < 235);
    expect(Number.isNaN(tint)).toBe(false);
    expect(new Set(dithered.levels)).toEqual(new Set([0, 255]));
    // The share of dots is that of the grey, within a twentieth; white stays clear and black lines stay full.
    expect(blackShare(grey, dithered, tint)).toBeCloseTo(1 - tint / 255, 1);
    expect(blackShare(grey, dithered, tint)).toBeGreaterThan(0.12);
    expect(blackShare(grey, dithered, 255)).toBe(0);
    expect(blackShare(grey, dithered, 0)).toBe(1);
  });

  it.each(sampled(Object.entries(signOfCaution), 'mono signs', 4))('the sign for %s, %s, keeps its edge against paper and its symbol against its ground', async (_caution, name) => {
    const page = monoPage(await printed(sign(pictogram(name).svg)), 1, 'gray');
    const levels = plateaus(page, 3000).filter((level) => level < 250);
    // Warning: black and yellow; mandatory: blue with white; prohibition: red and black, on white.
    const kind = name[0];
    const [dark = 255] = levels;
    expect(luminanceContrast(hex(dark), '#fff')).toBeGreaterThanOrEqual(CONTRAST);
    if (kind === 'W') {
      const yellow = levels.at(-1) ?? 0;
      expect(luminanceContrast(hex(yellow), '#000')).toBeGreaterThanOrEqual(CONTRAST);
      expect(255 - yellow).toBeGreaterThanOrEqual(APART);
    }
  });

  it('the booklet\'s own column in the table of sizes stands out from the others', async () => {
    const input = rackInput();
    const { html, css, dir } = bookletPages({ ...input, placePicture: ({ width, height }) => `<svg width="${width}mm" height="${height}mm" role="img" aria-label="x" viewBox="0 0 1 1"></svg>` });
    const pages = html.split(/(?=<section class="page")/);
    const table = pages.find((page) => page.includes('class="sizes"')) ?? '';
    const pdf = await printer.document({ id: 'table', html: table, css, lang: 'en', dir, title: 'x', paper: 'a4', contentMark: 'm' }, book);
    const tints = expectApart(monoPage(pdf, 1, 'gray'));
    expect(tints.some((level) => level < 255 && level > 128)).toBe(true);
  });

  it('a tint too near to white would be found: the check can fail', async () => {
    const page = monoPage(await printed(sign('<path d="M4 4H44V44H4z" fill="#f4f4f4"/>')), 1, 'gray');
    expect(() => expectApart(page)).toThrow();
  });
});

it('shows the steps that the plan has', () => {
  expect(steps.filter((action) => !rackPlan.steps.some((step) => step.action === action))).toEqual([]);
});
