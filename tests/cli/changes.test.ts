import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { longestCommon } from '../../src/cli/changes/compare.ts';
import { newWorkshop, type Workshop } from './workshop.ts';

let shop: Workshop;
beforeAll(async () => {
  shop = newWorkshop();
  expect((await shop.run(['make', 'stool', '--size', 'low', '--lang', 'en', '--edition', 'pictures', '--paper', 'a4', '--out', 'before', '--cache', 'kept'])).code).toBe(0);
});
afterAll(() => { shop.close(); });

const changes = (...more: readonly string[]): ReturnType<Workshop['run']> => shop.run(['changes', 'stool', '--since', 'before', '--cache', 'kept', ...more]);

describe('what a change did', () => {
  it('is nothing as long as nothing is changed, and tells sizes that were not made', async () => {
    expect(await changes()).toMatchObject({ code: 0, told: '', out: 'stool low: nothing changed\nstool standard: not made before\nstool high: not made before\n' });
  });

  it('is told measure by measure, with the pages to print again and each picture before and after', async () => {
    shop.change('steps/stool/item.yaml', '    height: 300 mm', '    height: 320 mm');
    const { code, told, out } = await changes('--size', 'low', '--out', 'changes.html');
    expect({ code, told }).toEqual({ code: 0, told: '' });
    expect(out).toMatch(/^stool low: 1 measure, .* pictures$/m);
    expect(out).toMatch(/^ {2}measure +height: 300 mm → 320 mm$/m);
    expect(out).toMatch(/^ {2}cut +post: 4 of 312 mm → 4 of 332 mm$/m);
    expect(out).toMatch(/^ {2}pages +to print again of \d+, pictures on A4: 1, /m);
    const page = shop.read('changes.html').toString();
    const count = Number(/, (\d+) pictures$/m.exec(out)?.[1]);
    expect(page.match(/<figure>/g)).toHaveLength(count);
    expect(page.match(/<img /g)).toHaveLength(2 * count);
    expect(shop.files().filter((path) => path.startsWith('booklets/'))).toEqual([]);
  });

  it('needs an earlier build that make wrote', async () => {
    expect(await changes('--since', 'nowhere')).toMatchObject({ code: 2, out: '', told: 'foldwright: nowhere/stool: no such folder; would be right: --since with the folder of an earlier build, as make wrote it\n' });
    shop.write('before/stool/low/build.json', '{"item": "stool"}');
    expect((await changes('--size', 'low')).told).toMatch(/^foldwright: before\/stool\/low\/build\.json: size: not as make writes it; would be right: /);
  });
});

describe('steps that stayed where they were', () => {
  const order = fc.uniqueArray(fc.constantFrom(...'abcdefgh'), { maxLength: 8 });

  it('are the longest list that stands in both in the same order', () => {
    fc.assert(fc.property(order, order, (one, other) => {
      const found = longestCommon(one, other);
      for (const list of [one, other]) expect(list.filter((each) => found.includes(each))).toEqual(found);
      // No longer one is among all lists that can be taken out of the first.
      const all = one.reduce<readonly (readonly string[])[]>((lists, each) => [...lists, ...lists.map((list) => [...list, each])], [[]]);
      const common = all.filter((list) => JSON.stringify(other.filter((each) => list.includes(each))) === JSON.stringify(list));
      expect(found.length).toBe(Math.max(...common.map(({ length }) => length)));
    }), { numRuns: 60 });
  });
});
