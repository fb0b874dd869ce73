import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Variant } from '../../src/cli/record.ts';
import { stepPageId } from '../../src/guide/pages/steps.tsx';
import { rack } from '../support/rack.ts';
import { rackGuide, rackVariant } from './made.ts';
import { oldEngine, openOldPhone, type OldPhone } from './old-phone.ts';

const SHOWN = "[...document.querySelectorAll('.page')].filter((each) => each.getClientRects().length > 0)";

const engine = await oldEngine();

describe.runIf(engine !== null)('a guide on an engine of 2018', () => {
  let variant: Variant;
  let phone: OldPhone;
  beforeAll(async () => {
    variant = await rackVariant('low');
    if (engine === null) throw new Error('only where the engine runs');
    phone = await openOldPhone(engine, await rackGuide(rack, 'low'));
  });
  afterAll(() => phone.close());

  const shown = (): Promise<unknown> => phone.run(`${SHOWN}.map(({ id }) => id).join(' ')`);

  it('is one of that year', () => {
    expect(phone.engine).toMatch(/^HeadlessChrome\/71\./); // Chromium 71, autumn 2018 (M)
  });

  it('turns through every page, each with its pictures, none wider than the screen', async () => {
    const walked: unknown[] = [];
    const empty: unknown[] = [];
    for (let last: unknown = null; last !== await shown();) {
      last = await shown();
      walked.push(last);
      const wide = await phone.run('document.documentElement.scrollWidth > innerWidth');
      const bare = await phone.run(`${SHOWN}.some((page) => [...page.querySelectorAll('.drawing svg')].some((svg) => svg.getBoundingClientRect().height < 40))`);
      if (wide === true || bare === true) empty.push({ page: last, wide, bare });
      if (await phone.run("document.querySelector('#next').disabled") === false) await phone.tap('#next');
    }
    expect(walked.filter((id) => String(id).startsWith('step-'))).toEqual(variant.plan.steps.map(stepPageId));
    expect(walked.at(-1)).toBe('load');
    expect(empty).toEqual([]);
  });

  it('shows words of a language once one is picked, and still after it is opened again', async () => {
    const words = "[...document.querySelectorAll('.caption')].filter((each) => each.getClientRects().length > 0).map(({ textContent }) => textContent).join('')";
    await phone.goTo('step-cut-tubes');
    await phone.tap('#open-words');
    await phone.tap('#words [lang="fr"]');
    await phone.tap('#words .leave');
    const said = await phone.run(words);
    expect(said).toMatch(/tube/i);
    await phone.reload();
    expect(await phone.run('document.documentElement.lang')).toBe('fr');
    expect(await phone.run(words)).toBe(said);
  });

  it('offers no model to turn where the phone draws none, and complains of nothing', async () => {
    expect(await phone.run("document.querySelector('#turn').disabled")).toBe(true);
    expect(phone.told).toEqual([]);
  });
});
