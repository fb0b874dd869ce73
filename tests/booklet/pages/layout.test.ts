import type { Browser } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findingColumns } from '../../../src/booklet/pages/colophon.tsx';
import { latinLines } from '../../../src/booklet/pages/setting.ts';
import { openBrowser } from '../../support/open-browser.ts';
import { fullOthers, fullRacks } from '../../support/chosen.ts';
import { furnitureInput } from './furniture-booklet.ts';
import { expectSound, openBooklet } from './look.ts';
import { rackInput } from './rack-booklet.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});

afterAll(() => browser.close());

it('reckons the lines of the findings\' sources as the browser breaks them, or one more', async () => {
  const { tab } = await openBooklet(browser, rackInput());
  const broken = await tab.evaluate(() => [...document.querySelectorAll('.findings .source')].map((source) =>
    ({ text: source.textContent ?? '', lines: Math.round(source.getBoundingClientRect().height / ((5.5 * 96) / 25.4)) })));
  expect(broken.length).toBeGreaterThan(10);
  for (const { text, lines } of broken) {
    const reckoned = latinLines(text, findingColumns.wide[0] - 3, 10);
    expect([reckoned - lines, text]).toSatisfy(([over]: [number, string]) => over === 0 || over === 1);
  }
  await tab.close();
});

describe.each(fullRacks)('the rack, $lang, $edition, $paper', ({ lang, edition, paper }) => {
  it('stays on its pages with text that can be read', async () => {
    await expectSound(browser, rackInput({ lang, edition, paper }));
  });
});

describe.each(fullOthers)('other items, $lang, $edition, $paper', ({ lang, edition, paper }) => {
  it.each(['chair', 'bed'] as const)('stay on their pages with text that can be read, printed despite a failed check: %s', async (name) => {
    await expectSound(browser, { ...furnitureInput(name, { lang, edition, paper }), despiteFindings: true });
  });

  it('tell a load for a person and for a child', async () => {
    for (const name of ['chair', 'bed'] as const) {
      const input = furnitureInput(name, { lang, edition, paper });
      await expectSound(browser, { ...input, report: { ...input.report, advice: { ...input.report.advice, safeLoadPerDeck: 1100, wall: null } } });
    }
  });
});
