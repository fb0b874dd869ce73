import { describe, expect, it } from 'vitest';
import { everything } from '../support/samples.ts';
import { browserCampaign } from './browsers.ts';
import { canMount, diskCampaign } from './disks.ts';
import { guidedCampaign } from './guided.ts';
import { keptKillCampaign } from './kept-kills.ts';
import { killCampaign } from './kills.ts';
import { mutationCampaign } from './mutations.ts';
import { workCampaign } from './works.ts';

// Short samples of the campaigns, by fixed seeds; the long ones are run by hand or at night: npm run campaign. Those that
// build again and again take minutes: `npm run test:all` has them.
describe('files damaged at random', () => {
  it('are refused with place and remedy, or read with all that comes of them finite', async () => {
    const figures = await mutationCampaign(everything ? 2000 : 500, 1, undefined, everything ? 'every size' : 'one size');
    expect(figures.faults).toEqual([]);
    // That the damage damages, and that some of it is let through, so that what is accepted is tried too.
    expect(figures.refused).toBeGreaterThan(figures.tried / 3);
    expect(figures.accepted).toBeGreaterThan(figures.tried / 5);
  });
});

describe('files damaged where the last damage reached new code', () => {
  it('are taken as well as those damaged blindly, and some grow from one that was kept', async () => {
    const { tried, kept, deeper, accepted, refused, faults } = await guidedCampaign(everything ? 1000 : 150, 4);
    expect(faults).toEqual([]);
    expect(accepted + refused).toBeGreaterThan(tried / 2);
    expect(kept).toBeGreaterThan(tried / 20);
    expect(deeper).toBeGreaterThan(0);
  });
});

describe.runIf(everything)('items that were damaged and are let through', () => {
  it('come to an order, cuts, a record and pictures of figures that can be, or are refused with a reason', async () => {
    const { tried, drawn, faults } = await workCampaign(20, 5);
    expect(faults).toEqual([]);
    expect(drawn).toBeGreaterThan(tried / 3);
  });
});

describe.runIf(process.platform === 'linux')('a build whose browser is killed', () => {
  it('finishes its book with another, the same byte for byte', async () => {
    const { builds, killed, tooLate, faults } = await browserCampaign(everything ? 6 : 1, 2);
    expect(faults).toEqual([]);
    expect(killed + tooLate).toBe(builds);
    expect(killed).toBeGreaterThan(0);
  });
});

describe.runIf(everything && process.platform === 'linux')('builds that are killed', () => {
  it('leave outputs old or new, no program and no profile, and the next one succeeds', async () => {
    const { kills, tooLate, faults } = await killCampaign(10, 3);
    expect(faults).toEqual([]);
    expect(kills + tooLate).toBe(10);
  });
});

describe.runIf(everything && process.platform === 'linux' && canMount())('builds on a disk that is full or cannot be written', () => {
  it('end with 3 and one line, and leave what was there; those that can keep nothing end well', async () => {
    const { disks, faults } = await diskCampaign();
    expect(faults).toEqual([]);
    expect(disks.map(({ code }) => code)).toEqual([3, 3, 3, 3, 3, 0, 0, 0]);
  });
});

describe.runIf(everything && process.platform === 'linux')('builds that are killed while they keep results', () => {
  it('leave whole results alone, and the next build makes the same from them', async () => {
    const { kills, tooLate, faults } = await keptKillCampaign(4, 3);
    expect(faults).toEqual([]);
    expect(kills + tooLate).toBe(4);
    expect(kills).toBeGreaterThan(tooLate);
  });
});
