import puppeteer, { type Browser } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bookletPages, type BookletInput, type PictureSize } from '../../../src/booklet/pages/index.ts';
import { sheets } from '../../../src/booklet/pages/sheet.ts';
import { chooseBrowser } from '../../../src/booklet/print/index.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import { partScale } from '../../../src/draw/index.ts';
import { textSize } from '../../../src/draw/picture/sizes.ts';
import { allFurniture, type Furniture } from './furniture-booklet.ts';
import { expectSound } from './look.ts';
import { rackInput, standInPictures } from './rack-booklet.ts';

const papers = ['a5', 'half-letter'] as const;
const small = FORMATS.small;

let browser: Browser;
let furnitureInput: Awaited<ReturnType<typeof allFurniture>>;
beforeAll(async () => {
  const { path, args, env } = await chooseBrowser();
  browser = await puppeteer.launch({ executablePath: path, args: [...args], env: { ...env }, headless: 'shell' });
  furnitureInput = await allFurniture(['chair', 'bed', 'desk']);
});
afterAll(() => browser.close());

/** A long part with its break, as wide as it is ever drawn. */
const long: PictureSize = { width: 72, height: 6 };

/** The booklet with stand-in pictures of the sizes that are drawn for small pages. */
function onSmallPages(input: BookletInput): BookletInput {
  const { full, lettered, pattern, sections, bench, deck, wrap, over, closeUp } = small;
  const steps = input.plan.steps.flatMap(({ number, action }): [string, PictureSize][] => {
    const id = `step:${number}`;
    if (action === 'cut-tubes') return [[id, { width: bench.width, height: 161.3 }], [`${id}:a`, { width: bench.width, height: 109 }]];
    if (action === 'drill' || action === 'pin-posts') return [[id, over], [`${id}:a`, closeUp]];
    return number === 14 ? [[id, deck], [`${id}:a`, wrap]] : [[id, bench]];
  });
  const pictures = {
    ...standInPictures(input.plan), 'part:post': long, 'part:long-tube': long, 'part:cable': long, finished: full, lettered, pattern, 'crease-section': sections, 'plate:1': bench, 'plate:2': bench, 'plate:3': bench,
    'cut-bars': { width: bench.width, height: 161.3 }, 'cut-bars:a': { width: bench.width, height: 109 }, ...Object.fromEntries(steps),
  };
  return { ...input, pictures, partScale: partScale('small') };
}

const all = (['en', 'fr', 'ar'] as const).flatMap((lang) => (['words', 'pictures'] as const).flatMap((edition) => papers.map((paper) => ({ lang, edition, paper }))));

describe.each(all)('on $paper, $lang, $edition', (wanted) => {
  it('the rack stays on its pages with text that can be read', async () => {
    await expectSound(browser, onSmallPages(rackInput(wanted)));
  });

  it.each(['chair', 'bed', 'desk'] satisfies Furniture[])('the %s too, printed despite a failed check', async (name) => {
    await expectSound(browser, { ...onSmallPages(furnitureInput(name, wanted)), despiteFindings: true });
  });
});

describe.each(['my', 'ur', 'el', 'am', 'ar+fr', 'en+my+ur', 'uk+am+ar'])('in %s', (lang) => {
  it.each(papers)('the rack stays on its pages on %s', async (paper) => {
    await expectSound(browser, onSmallPages(rackInput({ lang, paper })));
  });

  it('the bed too, printed despite a failed check', async () => {
    await expectSound(browser, { ...onSmallPages(furnitureInput('bed', { lang, paper: 'half-letter' })), despiteFindings: true });
  });
});

describe.each(papers)('pictures on %s', (paper) => {
  // ISO/IEC Guide 37 (CHECKS "Drawings and signs", R): running text of at least 10 pt; a point is 25.4 / 72 mm.
  it('keep their text at 10 pt where they are set the smallest', () => {
    const { pictureScale, leastScale } = sheets[paper];
    expect((textSize * pictureScale * leastScale * 72) / 25.4).toBeGreaterThanOrEqual(9.99);
    expect(leastScale).toBeLessThanOrEqual(1);
    expect(small.bench.width * pictureScale).toBeLessThanOrEqual(sheets[paper].main + 1e-6);
  });

  it('are all there, in order, a step with more than a page holds going on on the next', () => {
    const { html } = bookletPages(onSmallPages(rackInput({ paper })));
    const pages = html.split('<section class="page"').map((page) => [...page.matchAll(/data-picture="(step:[^"]*)"/g)].map(([, id]) => id));
    const ids = Object.keys(onSmallPages(rackInput({ paper })).pictures).filter((id) => id.startsWith('step:'));
    expect(pages.flat()).toEqual(ids.sort((one, other) => one.localeCompare(other, 'en', { numeric: true })));
    const [first, second] = pages.filter((ids) => ids.some((id) => id?.startsWith('step:1') === true && !/step:1\d/.test(id)));
    expect([first, second]).toEqual([['step:1'], ['step:1:a']]);
    expect(html.match(/<h2/g)).toHaveLength(rackInput().plan.steps.length);
    expect(html.match(/class="strip"/g)).toHaveLength(rackInput().plan.steps.length);
  });

  it('stand at the scale that their bar tells', () => {
    const { html } = bookletPages(onSmallPages(rackInput({ paper })));
    const own = rackInput().pictures['part:joint'];
    expect(html).toContain(`data-picture="part:joint" aria-label="16 corner joints" direction="ltr" width="${own?.width ?? NaN}mm"`);
    expect(html).toContain('1\u202f:\u202f20');
  });
});
