import { describe, expect, it } from 'vitest';
import { chooseBrowser } from '../../../src/booklet/print/chooseBrowser.ts';
import { launchPatiently } from '../../../src/booklet/print/launch.ts';
import { newPatience } from '../../../src/booklet/print/patience.ts';
import { openPress } from '../../../src/booklet/print/press.ts';
import { SLOWEST } from '../../support/waiting.ts';

describe('patience with browsers', () => {
  it.each([['start', [30_000, 60_000, 120_000, 240_000, 480_000, 480_000]], ['work', [30_000, 120_000, 480_000, 480_000, 480_000, 480_000]]] as const)('grows with each that is lost at its %s, to sixteen times the first wait and no further', (lost, expected) => {
    const patience = newPatience(30_000);
    const waits = Array.from({ length: 20 }, () => {
      const { wait } = patience;
      patience.grow(lost);
      return wait;
    });
    expect(waits.slice(0, 6)).toEqual(expected);
    expect(Math.max(...waits)).toBe(480_000);
  });

  it('is one for all tries that stand within one another', async () => {
    const patience = newPatience(SLOWEST);
    patience.grow('work');
    const nothing = { path: '/no/such/browser', how: 'named', args: [], env: {} } as const;
    await expect(launchPatiently(nothing, patience)).rejects.toThrow(/does not start/);
    await expect(launchPatiently(nothing, patience)).rejects.toThrow(/does not start/);
    expect(patience.wait).toBe(16 * SLOWEST);
  });

  it('begins anew with every work', async () => {
    const press = await openPress(await chooseBrowser(), ['en'], SLOWEST);
    try {
      const waits: number[] = [];
      for (let work = 0; work < 2; work++) {
        await press.run(async (tab, wait) => {
          waits.push(wait / SLOWEST);
          if (waits.length % 2 === 1) process.kill(tab.browser().process()?.pid ?? 0, 'SIGKILL');
          return tab.evaluate('1');
        });
      }
      expect(waits).toEqual([1, 4, 4, 4]);
    } finally {
      await press.close();
    }
  });
});
