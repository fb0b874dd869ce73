import type { Browser } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bookletPages, type BookletInput, type PictureSize } from '../../../src/booklet/pages/index.ts';
import { sheets } from '../../../src/booklet/pages/sheet.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import { findPicture, partScale, pictureId, piecesOf } from '../../../src/draw/index.ts';
import { capHeights, fontSize } from '../../../src/draw/kit/lettering.ts';
import type { Step } from '../../../src/plan/index.ts';
import { openBrowser } from '../../support/open-browser.ts';
import { halfBeds, halfOthers, halfRacks, halfLanguages } from '../../support/chosen.ts';
import { furnitureInput } from './furniture-booklet.ts';
import { expectSound } from './look.ts';
import { rackInput, standInPictures, withPictures } from './rack-booklet.ts';

const papers = ['a5', 'half-letter'] as const;
const small = FORMATS.small;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** A long part with its break, as wide as it is ever drawn. */
const long: PictureSize = { width: 72, height: 6 };

/** The booklet with stand-in pictures of the sizes that are drawn for small pages. */
function onSmallPages(input: BookletInput): BookletInput {
  const { full, lettered, pattern, sections, bench, deck, wrap, whole } = small;
  const bars = [{ width: bench.width, height: 161.3 }, { width: bench.width, height: 109 }];
  const inPieces = ({ action, number }: Step): readonly PictureSize[] => {
    if (action === 'cut-tubes') return bars;
    if (action === 'drill' || action === 'pin-posts') return [whole];
    return number === 14 ? [deck, wrap] : [bench];
  };
  const pictures = withPictures(
    standInPictures(input.plan),
    ...(['post', 'long-tube', 'cable'] as const).map((kind) => ({ of: { what: 'part' as const, kind }, ...long })),
    { of: { what: 'finished' }, ...full }, { of: { what: 'lettered' }, ...lettered }, { of: { what: 'pattern', pattern: 0 }, ...pattern }, { of: { what: 'crease-section', pattern: 0 }, ...sections },
    { of: { what: 'stock' }, width: bench.width, height: 39 },
    ...[0, 1, 2].map((plate) => ({ of: { what: 'plate' as const, plate }, ...bench })),
    ...bars.map((size, piece) => ({ of: { what: 'cut-bars' as const, piece }, ...size })),
    ...input.plan.steps.flatMap((step) => inPieces(step).map((size, piece) => ({ of: { what: 'step' as const, step: step.number, piece }, ...size }))),
  );
  return { ...input, pictures, partScale: partScale('small') };
}

describe('text that can be read stays on its pages', () => {
  it.each(halfRacks)('the rack on $paper, $lang, $edition', async (wanted) => {
    await expectSound(browser, onSmallPages(rackInput(wanted)));
  });

  it.each(halfOthers)('the $item on $paper, $lang, $edition, printed despite a failed check', async ({ item, ...wanted }) => {
    await expectSound(browser, { ...onSmallPages(furnitureInput(item, wanted)), despiteFindings: true });
  });

  it.each(halfLanguages)('the rack on $paper, $lang', async (wanted) => {
    await expectSound(browser, onSmallPages(rackInput(wanted)));
  });

  it.each(halfBeds)('the bed, %s, printed despite a failed check', async (lang) => {
    await expectSound(browser, { ...onSmallPages(furnitureInput('bed', { lang, paper: 'half-letter' })), despiteFindings: true });
  });
});

describe.each(papers)('pictures on %s', (paper) => {
  // ISO/IEC Guide 37 (CHECKS "Drawings and signs", R): running text of at least 10 pt; a point is 25.4 / 72 mm.
  it('keep their text at 10 pt where they are set the smallest', () => {
    const { pictureScale, leastScale } = sheets[paper];
    expect((fontSize(capHeights.scene) * pictureScale * leastScale * 72) / 25.4).toBeGreaterThanOrEqual(9.99);
    expect(leastScale).toBeLessThanOrEqual(1);
    expect(small.bench.width * pictureScale).toBeLessThanOrEqual(sheets[paper].main + 1e-6);
  });

  it('are all there, in order, a step with more than a page holds going on on the next', () => {
    const { html } = bookletPages(onSmallPages(rackInput({ paper })));
    const pages = html.split('<section class="page"').map((page) => [...page.matchAll(/data-picture="(step:[^"]*)"/g)].map(([, id]) => id));
    const { plan, pictures } = onSmallPages(rackInput({ paper }));
    expect(pages.flat()).toEqual(plan.steps.flatMap(({ number }) => piecesOf(pictures, { what: 'step', step: number }).map(({ of }) => pictureId(of))));
    const [first, second] = pages.filter((ids) => ids.some((id) => id?.startsWith('step:1') === true && !/step:1\d/.test(id)));
    expect([first, second]).toEqual([['step:1'], ['step:1:a']]);
    expect(html.match(/<h2/g)).toHaveLength(rackInput().plan.steps.length);
    // Its first page and its last have the strip of pictograms; what to look at comes once, at its end.
    const onSeveral = plan.steps.filter(({ number }) => pages.filter((ids) => ids.some((id) => id === `step:${number}` || id?.startsWith(`step:${number}:`) === true)).length > 1);
    expect(onSeveral).not.toEqual([]);
    expect(html.match(/class="strip( parted( low)?)?"/g)).toHaveLength(plan.steps.length + onSeveral.length);
    expect(html.match(/<li class="check">/g)).toHaveLength(plan.steps.filter(({ check }) => check !== null).length);
  });

  it('stand at the scale that their bar tells', () => {
    const { html } = bookletPages(onSmallPages(rackInput({ paper })));
    const own = findPicture(rackInput().pictures, { what: 'part', kind: 'joint' });
    expect(html).toContain(`data-picture="part:joint" aria-label="16 corner joints" direction="ltr" width="${own?.width ?? NaN}mm"`);
    expect(html).toContain('1\u202f:\u202f20');
  });
});
