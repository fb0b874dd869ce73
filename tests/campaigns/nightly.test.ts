import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { everything } from '../support/samples.ts';
import { nightlyCampaign, nights, ranAlone, type Night } from './nightly.ts';

const night = (name: string, without: string | null = null): Night => ({ name, count: 3, without });

describe('the campaigns of a night', () => {
  it('are all that there are, each once', () => {
    expect(nights().map(({ name }) => name).sort()).toEqual(['browsers', 'cache', 'disks', 'guided', 'kept-kills', 'kills', 'mutations', 'works']);
    expect(nights().find(({ name }) => name === 'mutations')?.count).toBe(10_000);
    expect(nights().find(({ name }) => name === 'kills')?.count).toBe(100);
  });

  it('are reported with seed, outcome and the call that does each again, also when one finds something', () => {
    const folder = mkdtempSync(join(tmpdir(), 'foldwright-night-'));
    try {
      const path = join(folder, 'reports', 'night.md');
      const told: string[] = [];
      const found = nightlyCampaign(20261130, path, (line) => { told.push(line); }, (one, seed) => ({ ...one, seed, code: one.without === null ? Number(one.name === 'second') : null, told: `figures of ${one.name}\n` }), [night('first'), night('second'), night('third', 'no disk')]);
      expect(found).toBe(true);
      expect(told).toEqual(['first, 3 times, seed 20261130: nothing found', 'second, 3 times, seed 20261130: faults', 'third, 3 times, seed 20261130: not run']);
      const report = readFileSync(path, 'utf8');
      expect(report).toContain('| first | 3 | 20261130 | nothing found | `npm run campaign -- first 3 20261130` |');
      expect(report).toContain('| second | 3 | 20261130 | faults |');
      expect(report).toContain('| third | 3 | 20261130 | not run: no disk |');
      expect(report).toContain('figures of second');
      expect(report).not.toContain('figures of third');
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it.runIf(everything)('run each in a process of its own, whose figures are told', () => {
    const { code, told } = ranAlone({ name: 'mutations', count: 20, without: null }, 5);
    expect(told).toMatch(/^mutations, 20 times, seed 5\n[^]*"tried": 20,[^]*"faults": \[\]/);
    expect(code).toBe(0);
  });

  it('fail where the runner does', () => {
    expect(ranAlone(night('no-such-campaign'), 1)).toMatchObject({ code: 1, told: expect.stringContaining('no such campaign') });
  });
});
