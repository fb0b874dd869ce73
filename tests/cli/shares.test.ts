import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { divided, type Piece } from '../../src/cli/shares/divide.ts';
import { shareAsked } from '../../src/cli/shares/share.ts';
import { workshopWithGantry } from './gantry.ts';
import type { Workshop } from './workshop.ts';

const program = fileURLToPath(new URL('../../src/cli/foldwright.mjs', import.meta.url));

describe('the share asked for', () => {
  // The variables: sbatch(1) of Slurm 22.05, "Output environment variables" (R); the array jobs of Grid Engine, qsub(1) -t
  // (R2, an institute's manual); LSB_JOBINDEX, "any integer greater than zero": LSF reference 6.2 (R2); the others (M).
  it.each([
    ['1/1', {}, 1, 1],
    ['2/3', {}, 2, 3],
    ['2/3', { SLURM_ARRAY_TASK_ID: '1' }, 2, 3],
    ['array', { SLURM_ARRAY_TASK_ID: '2', SLURM_ARRAY_TASK_MIN: '1', SLURM_ARRAY_TASK_MAX: '3' }, 2, 3],
    ['array/3', { SLURM_ARRAY_TASK_ID: '2', SLURM_ARRAY_TASK_MIN: '2', SLURM_ARRAY_TASK_MAX: '2' }, 2, 3],
    ['array', { SGE_TASK_ID: '3', SGE_TASK_FIRST: '1', SGE_TASK_LAST: '4' }, 3, 4],
    ['array/5', { SGE_TASK_ID: 'undefined', LSB_JOBINDEX: '5' }, 5, 5],
    ['array/5', { PBS_ARRAY_INDEX: '1' }, 1, 5],
    ['array/5', { JOB_COMPLETION_INDEX: '0' }, 1, 5],
  ])('%s with %j', (asked, env, index, count) => {
    expect(shareAsked(asked, env)).toEqual({ index, count });
  });

  it.each([
    ['0/3', {}, /^--share 0\/3: not a share; would be right: such as 1\/3/],
    ['4/3', {}, /not a share/],
    ['3', {}, /not a share/],
    ['1/0', {}, /not a share/],
    ['1/99999', {}, /not a share/],
    ['-1/3', {}, /not a share/],
    ['1.5/3', {}, /not a share/],
    ['', {}, /not a share/],
    ['array', {}, /no variable tells which job of an array this is; would be right: one of SLURM_ARRAY_TASK_ID, /],
    ['array/3', { SLURM_ARRAY_TASK_ID: '0' }, /SLURM_ARRAY_TASK_ID=0: not a share/],
    ['array/3', { JOB_COMPLETION_INDEX: '3' }, /not a share/],
    // One job of the array is run again by itself: to take it for the whole would make everything, or the wrong part.
    ['array', { SLURM_ARRAY_TASK_ID: '2', SLURM_ARRAY_TASK_MIN: '2', SLURM_ARRAY_TASK_MAX: '2' }, /nothing tells how many shares there are, from 1 on; would be right: array\/3 for 3 shares/],
    ['array', { JOB_COMPLETION_INDEX: '1' }, /nothing tells how many shares/],
  ])('%s with %j is refused', (asked, env, told) => {
    expect(() => shareAsked(asked, env)).toThrow(told);
  });
});

describe('pieces of work', () => {
  const pieces = fc.uniqueArray(fc.record({ item: fc.constant('rack'), size: fc.string(), key: fc.stringMatching(/^[0-9a-f]{8}$/), work: fc.integer({ min: 1, max: 500 }) }), { selector: ({ key }) => key, minLength: 1, maxLength: 40 });

  it('are dealt each to one share, and in the same way whatever order they come in', () => {
    fc.assert(fc.property(pieces, fc.integer({ min: 1, max: 12 }), (all, count) => {
      const shares = divided(all, count);
      expect(shares).toHaveLength(count);
      const byKey = (some: readonly Piece[]): readonly string[] => some.map(({ key }) => key).sort();
      expect(byKey(shares.flat())).toEqual(byKey(all));
      expect(divided([...all].reverse(), count)).toEqual(shares);
    }));
  });

  // Whoever takes the next piece as soon as he is free ends no later than the mean and the longest piece together:
  // R. L. Graham, Bounds for certain multiprocessing anomalies, Bell System Technical Journal 45 (1966) (M).
  it('are dealt so that no share is much longer than it has to be', () => {
    fc.assert(fc.property(pieces, fc.integer({ min: 1, max: 12 }), (all, count) => {
      const work = (some: readonly Piece[]): number => some.reduce((sum, one) => sum + one.work, 0);
      const longest = Math.max(...divided(all, count).map(work));
      expect(longest).toBeLessThanOrEqual(work(all) / count + Math.max(...all.map((one) => one.work)));
    }));
  });
});

describe('a catalogue in shares', () => {
  let shop: Workshop;
  beforeAll(() => { shop = workshopWithGantry(); });
  afterAll(() => { shop.close(); });

  const MAKE = ['make', 'gantry', '--size', 'low', 'standard', '--lang', 'en', '--paper', 'a4', '--cache', 'kept'];
  const make = (share: string, out = 'shares'): ReturnType<Workshop['run']> => shop.run([...MAKE, '--share', share, '--out', out]);
  const gather = (...folders: readonly string[]): ReturnType<Workshop['run']> => shop.ask(['gather', ...folders, '--out', 'all']);
  const under = (folder: string): Record<string, string> => Object.fromEntries(shop.files().filter((path) => path.startsWith(`${folder}/`) && !/share-\d-of-\d\.json$/.test(path))
    .map((path) => [path.slice(folder.length), shop.read(path).toString('base64')]));
  const sizesIn = (folder: string): readonly string[] => [...new Set(Object.keys(under(folder)).map((path) => path.split('/')[2] ?? ''))];

  it('says what is missing as long as a share is not done, though it was begun, and puts the rest together', async () => {
    expect(await gather('shares')).toMatchObject({ code: 2, out: '', told: expect.stringMatching(/^foldwright: shares: no share that is done .*; would be right: the folders that make --share has written to\n$/) as string });
    const done = await make('1/2');
    expect(done).toMatchObject({ code: 0, told: '' });
    expect(done.out).toContain('shares/share-1-of-2.json\n');
    const broken = spawn(process.execPath, [program, ...MAKE, '--share', '2/2', '--out', 'broken'], { cwd: shop.folder, stdio: ['ignore', 'pipe', 'ignore'] });
    await once(broken.stdout, 'data');
    broken.kill('SIGKILL');
    await once(broken, 'exit');
    // What writes the list of what it made last had no time to, however slow the one who ends it.
    if (shop.files().includes('broken/share-2-of-2.json')) shop.remove('broken/share-2-of-2.json');
    const gathered = await gather('shares', 'broken');
    const other = sizesIn('shares')[0] === 'low' ? 'standard' : 'low';
    expect(gathered.code).toBe(2);
    expect(gathered.told).toBe(`foldwright: share 2 of 2 is missing: gantry ${other}; would be right: the same make with that share again, then gather\n`);
    expect(under('all')).toEqual(under('shares'));
  });

  it('is what it is when it is made at once, when the share is made again', async () => {
    expect((await make('2/2', 'broken')).code).toBe(0);
    expect(sizesIn('broken')).not.toEqual(sizesIn('shares'));
    expect(await gather('shares', 'broken')).toMatchObject({ code: 0, told: '' });
    expect((await shop.run([...MAKE, '--out', 'whole'])).code).toBe(0);
    expect(under('all')).toEqual(under('whole'));
    expect(await gather('shares', 'broken')).toMatchObject({ code: 0, told: '', out: '' });
  });

  it('takes no file that is not as it was made, no share of another build and no path out of its folder', async () => {
    const [harmed = ''] = shop.files().filter((path) => path.startsWith('broken/') && path.endsWith('words.pdf'));
    shop.write(harmed, 'not a booklet');
    expect((await gather('shares', 'broken')).told).toContain(`share 2 of 2 is damaged (${harmed}): gantry`);
    const manifest = shop.read('broken/share-2-of-2.json').toString();
    shop.write('broken/share-2-of-2.json', manifest.replace(/"path": "[^"]*"/, '"path": "../../escaped"'));
    expect((await gather('shares', 'broken')).told).toMatch(/^foldwright: broken\/share-2-of-2\.json: files\.0\.path: not as it was written; would be right: /);
    shop.write('broken/share-2-of-2.json', manifest.replace(/"catalogue": "./, '"catalogue": "').replace('",', '0",'));
    expect((await gather('shares', 'broken')).told).toMatch(/shares\/share-1-of-2\.json and broken\/share-2-of-2\.json are shares of different builds: .*; would be right: shares of one\n$/);
    shop.write('broken/share-2-of-2.json', manifest.slice(0, 40));
    expect((await gather('shares', 'broken')).told).toMatch(/^foldwright: broken\/share-2-of-2\.json: no JSON .*; would be right: /);
  });
});
