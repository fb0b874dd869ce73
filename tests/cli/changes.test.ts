import { execFileSync, spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { longestCommon } from '../../src/cli/changes/compare.ts';
import { reprints } from '../../src/cli/changes/reprints.ts';
import { stillServing } from '../../src/cli/changes/still-serve.ts';
import { readAgain, type StructureNode } from '../booklet/print/second-reader.ts';
import { GANTRY, workshopWithGantry } from './gantry.ts';
import type { Workshop } from './workshop.ts';

const hasGit = spawnSync('git', ['--version']).status === 0;
const git = (...args: readonly string[]): void => { execFileSync('git', ['-c', 'user.name=Tester', '-c', 'user.email=tester@example.org', ...args], { cwd: shop.folder }); };

let shop: Workshop;
beforeAll(async () => {
  shop = workshopWithGantry();
  if (hasGit) for (const args of [['init', '-q'], ['add', 'steps'], ['commit', '-q', '-m', 'as it was']]) git(...args);
  expect((await shop.run(['make', 'gantry', '--size', 'low', '--lang', 'en', '--edition', 'pictures', '--paper', 'a4', '--out', 'before'])).code).toBe(0);
});
afterAll(() => { shop.close(); });

/** All that stands in a part of a page, and what its pictures say to those who hear it. */
const textIn = ({ text, children }: StructureNode): string => [text, ...children.map(textIn)].join(' ');
const altsIn = ({ alt, children }: StructureNode): readonly string[] => [...(alt === undefined ? [] : [alt]), ...children.flatMap(altsIn)];

const changes = (...more: readonly string[]): ReturnType<Workshop['run']> => shop.run(['changes', 'gantry', '--since', 'before', ...more]);
/** The same for a call that is refused before anything is worked out. */
const refused = (...more: readonly string[]): ReturnType<Workshop['ask']> => shop.ask(['changes', 'gantry', '--since', 'before', ...more]);
/** What it told of the low one, against the build from before. */
let since = '';

describe('what a change did', () => {
  it('is nothing as long as nothing is changed, and tells sizes that were not made', async () => {
    expect(await changes()).toMatchObject({ code: 0, told: '', out: 'gantry low: nothing changed\ngantry standard: not made before\ngantry high: not made before\n' });
  });

  it('is told measure by measure, with the pages to print again and each picture before and after', async () => {
    shop.change(GANTRY, '    height: 740 mm', '    height: 760 mm');
    const { code, told, out } = await changes('--size', 'low', '--out', 'changes.html');
    since = out.replace(/changes\.html\n$/, '');
    expect({ code, told }).toEqual({ code: 0, told: '' });
    expect(out).toMatch(/^gantry low: 1 measure, .* pictures$/m);
    expect(out).toMatch(/^ {2}measure +height: 740 mm → 760 mm$/m);
    expect(out).toMatch(/^ {2}cut +bar: 2 of 681 mm, .* → 2 of 701 mm, /m);
    expect(out).toMatch(/^ {2}sawn +serve as they are: .*bar \d of \d+ mm/m);
    expect(out).toMatch(/^ {2}pages +to print again of \d+, pictures on A4: 1, /m);
    expect(out).toMatch(/^ {2}pages +to print again of \d+, pictures on Letter: 1, /m);
    expect(out).toMatch(/^ {2}pages +to print again of \d+, words in .*\ben\b.*: 1, /m);
    const page = shop.read('changes.html').toString();
    const count = Number(/, (\d+) pictures$/m.exec(out)?.[1]);
    expect(page.match(/<figure>/g)).toHaveLength(count);
    expect(page.match(/<img /g)).toHaveLength(2 * count);
    expect(shop.files().filter((path) => path.startsWith('booklets/'))).toEqual([]);
  });

  it('is printed where that is asked for, and what is made then says which print it replaces', async () => {
    const { code, out } = await changes('--size', 'low', '--print', 'sheets', '--paper', 'a4');
    expect({ code, files: out.match(/^sheets.*$/gm) }).toEqual({ code: 0, files: ['sheets/gantry-low-changes-en.pdf'] });
    const marks = /^\{\n {2}"mark": "([0-9a-f]{8})"/;
    const [, before = ''] = marks.exec(shop.read('before/gantry/low/build.json').toString()) ?? [];
    expect((await shop.run(['make', 'gantry', '--size', 'low', '--lang', 'en', '--edition', 'words', '--paper', 'a4', '--out', 'after'])).code).toBe(0);
    const [, after = ''] = marks.exec(shop.read('after/gantry/low/build.json').toString()) ?? [];
    // One after the other: what reads them holds one at a time.
    const sheets = await readAgain(Uint8Array.from(shop.read('sheets/gantry-low-changes-en.pdf')));
    const booklet = await readAgain(Uint8Array.from(shop.read('after/gantry/low/gantry-low-en-words.pdf')));
    const [first = ''] = sheets.pages.map(textIn);
    expect(first).toMatch(new RegExp(`What changed.*Gantry, Low.*${after}.*Replaces print.*${before}.*Pages to print again.*Height.*740 mm.*760 mm`, 's'));
    expect(sheets.untied).toEqual([]);
    const figures = sheets.pages.flatMap(altsIn);
    const now = figures.filter((alt) => alt.endsWith('Now'));
    expect(now.length).toBeGreaterThan(10);
    expect(figures.filter((alt) => alt.endsWith('Before'))).toHaveLength(now.length);
    expect(booklet.pages.map(textIn).filter((text) => text.includes('Replaces print'))).toEqual([expect.stringContaining(before)]);
  });

  it.skipIf(!hasGit)('is the same against the texts of a revision in git', async () => {
    expect(await changes('--size', 'low', '--from', 'HEAD')).toMatchObject({ code: 0, told: '', out: since });
    expect(await refused('--size', 'low', '--from', 'nowhere')).toMatchObject({ code: 2, out: '', told: expect.stringMatching(/^foldwright: --from nowhere: git has no such revision of steps\/ here \(.+\); would be right: one such as HEAD~1, or --since /) as string });
    expect(await refused('--size', 'low', '--from=--output=stolen')).toMatchObject({ code: 2, out: '', told: 'foldwright: --from --output=stolen: no name of a revision; would be right: such as HEAD~1\n' });
    expect(shop.files()).not.toContain('stolen');
  });

  it('needs an earlier build that make wrote', async () => {
    expect(await refused('--since', 'nowhere')).toMatchObject({ code: 2, out: '', told: 'foldwright: nowhere/gantry: no such folder; would be right: --since with the folder of an earlier build, as make wrote it, or --from with a revision in git\n' });
    shop.write('before/gantry/low/build.json', '{"item": "gantry"}');
    expect((await refused('--size', 'low')).told).toMatch(/^foldwright: before\/gantry\/low\/build\.json: size: not as make writes it; would be right: /);
  });
});

describe('what was sawn before', () => {
  const pieces = fc.array(fc.record({ kind: fc.constantFrom('post', 'bar'), length: fc.integer({ min: 50, max: 900 }), count: fc.integer({ min: 1, max: 4 }) }), { maxLength: 6 });

  it('serves as it is, shortened, or from what was left over, in this order', () => {
    const before: Parameters<typeof stillServing>[0] = { pieces: [{ kind: 'post', length: 332, count: 4 }, { kind: 'bar', length: 445, count: 2 }, { kind: 'bar', length: 800, count: 1 }], offCuts: [300, 90], kerf: 2 };
    expect(stillServing(before, [{ kind: 'post', length: 312, count: 5 }, { kind: 'bar', length: 445, count: 1 }, { kind: 'bar', length: 444, count: 1 }, { kind: 'bar', length: 88, count: 3 }, { kind: 'post', length: 120, count: 1 }])).toEqual({
      asTheyAre: [{ kind: 'bar', length: 445, count: 1 }],
      // 444 of 445 mm leaves less than the saw takes: it comes from the longer one.
      shortened: [{ kind: 'bar', length: 800, to: 444, count: 1 }, { kind: 'post', length: 332, to: 312, count: 4 }, { kind: 'bar', length: 445, to: 88, count: 1 }],
      fromOffCuts: [{ kind: 'post', length: 120, count: 1 }, { kind: 'bar', length: 88, count: 2 }],
    });
  });

  it('serves once, and no piece is found for more than are needed', () => {
    fc.assert(fc.property(pieces, pieces, fc.array(fc.integer({ min: 0, max: 600 }), { maxLength: 3 }), (cut, needed, offCuts) => {
      const { asTheyAre, shortened, fromOffCuts } = stillServing({ pieces: cut, offCuts, kerf: 2 }, needed);
      const sum = (all: readonly { readonly count: number }[]): number => all.reduce((total, { count }) => total + count, 0);
      expect(sum(asTheyAre) + sum(shortened)).toBeLessThanOrEqual(sum(cut));
      expect(sum(asTheyAre) + sum(shortened) + sum(fromOffCuts)).toBeLessThanOrEqual(sum(needed));
      expect(fromOffCuts.reduce((total, { length, count }) => total + length * count, 0)).toBeLessThanOrEqual(offCuts.reduce((total, length) => total + length, 0));
      expect(stillServing({ pieces: cut, offCuts: [], kerf: 2 }, cut)).toMatchObject({ shortened: [], fromOffCuts: [] });
      for (const { length, to } of shortened) expect(length - to).toBeGreaterThanOrEqual(2);
    }));
  });
});

describe('pages to print again', () => {
  const booklet = (lang: string | null, paper: 'a4' | null, ...on: readonly (readonly [string, readonly number[]])[]): Parameters<typeof reprints>[0][0] =>
    ({ edition: lang === null ? 'pictures' : 'words', paper, lang, pages: new Map(on) });

  it('are told once for all languages in which they are the same', () => {
    const all = [booklet(null, 'a4', ['one', [3]], ['two', [4, 2]]), booklet('en', null, ['one', [5]], ['two', [6]]), booklet('fr', null, ['one', [5]], ['two', [6]]), booklet('my', null, ['one', [7]], ['two', [8]])];
    expect(reprints(all, new Set(['two', 'gone']))).toEqual([
      { edition: 'pictures', paper: 'a4', langs: [], pages: [2, 4], pageCount: 4 },
      { edition: 'words', paper: null, langs: ['en', 'fr'], pages: [6], pageCount: 6 },
      { edition: 'words', paper: null, langs: ['my'], pages: [8], pageCount: 8 },
    ]);
    expect(reprints(all, new Set())).toEqual([]);
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
