import { describe, expect, it } from 'vitest';
import { EDITIONS, PUBLICATIONS } from '../../src/booklet/publications/facts.ts';
import { languagesIn } from '../../src/booklet/words/index.ts';
import { localesOnDisk } from '../booklet/pages/rack-booklet.ts';
import * as chosen from './chosen.ts';
import { everySize } from './items.ts';
import { covering, drawn } from './samples.ts';

const letters = [...'abcdefghijklmnop'];
const table = letters.flatMap((letter) => ['1', '2', '3', '4'].flatMap((digit) => ['x', 'y', 'z'].map((end) => ({ letter, digit, end }))));
const groups = [['letter', 'digit'], ['digit', 'end'], ['letter', 'end']] as const;

describe('a sample', () => {
  it('is the same each time, in the order of the list, another one by another key, and never empty', () => {
    expect(drawn(letters, 'one', 5)).toEqual(drawn(letters, 'one', 5));
    expect(drawn(letters, 'one', 5)).toHaveLength(5);
    expect([...drawn(letters, 'one', 5)].sort()).toEqual(drawn(letters, 'one', 5));
    expect(drawn(letters, 'two', 5)).not.toEqual(drawn(letters, 'one', 5));
    expect(drawn(letters, 'one', 0)).toHaveLength(1);
    expect(drawn(letters, 'one', 99)).toEqual(letters);
  });

  it('hangs on names alone: what is added takes the place of one at most', () => {
    const before = drawn(letters, 'one', 5);
    expect(drawn([...letters].reverse(), 'one', 5)).toEqual([...before].reverse());
    for (const added of ['q', 'r', 's', 't']) expect(drawn([added, ...letters], 'one', 5).filter((each) => before.includes(each)).length).toBeGreaterThanOrEqual(4);
  });

  it('of a table has all pairs it is asked for, in fewer rows than there are', () => {
    const rows = covering(table, 'one', groups);
    for (const group of groups) {
      const pairs = (of: typeof table): ReadonlySet<string> => new Set(of.map((row) => group.map((column) => row[column]).join()));
      expect(pairs([...rows])).toEqual(pairs(table));
    }
    expect(rows.length).toBeLessThan(table.length / 2);
    expect(covering([...table].reverse(), 'one', groups)).toEqual([...rows].reverse());
  });
});

describe('the samples of all tests', () => {
  const { pagedSizes, wordPages, picturePages, wallPosters, overviewPosters, workSizes, partSizes, drawnSizes, languages } = chosen;
  const pages = [...wordPages, ...picturePages, ...wallPosters, ...overviewPosters];
  const count = (values: readonly string[]) => (value: string): number => values.filter((each) => each === value).length;

  it('have every item in each of the long tests, and the sizes they take several times', () => {
    const names = [...new Set(everySize.map(({ item }) => item.name))];
    for (const sizes of [workSizes, partSizes, pagedSizes]) expect([...new Set(sizes.map(({ item }) => item.name))]).toEqual(names);
    const often = count(pages.map(({ size }) => size));
    for (const { name } of pagedSizes) expect([name, often(name) >= 4]).toEqual([name, true]);
    expect(drawnSizes.length).toBeGreaterThan(1);
  });

  it('know all languages', () => { expect(languages).toEqual(languagesIn(localesOnDisk()).toSorted()); });

  it('have every language with every item and on every paper, and again letter by letter', () => {
    const pairs = new Set(wordPages.flatMap(({ item, lang, paper }) => [`${item} ${lang}`, `${lang} ${paper}`]));
    for (const lang of languages) {
      for (const other of [...new Set(everySize.map(({ item }) => item.name)), ...PUBLICATIONS.words.papers]) {
        expect([lang, other, pairs.has(`${other} ${lang}`) || pairs.has(`${lang} ${other}`)]).toEqual([lang, other, true]);
      }
      expect(chosen.measuredAlone.map((row) => row.lang)).toContain(lang);
    }
  });

  it('have every edition on every paper it comes on, every item on every paper of booklets', () => {
    const editions = { words: wordPages, pictures: picturePages, wall: wallPosters, overview: overviewPosters };
    for (const { name, papers } of EDITIONS) {
      const often = count(editions[name].map(({ paper }) => paper));
      for (const paper of papers) expect([name, paper, often(paper) >= 4]).toEqual([name, paper, true]);
    }
    const pairs = new Set(wordPages.map(({ size, paper }) => `${size} ${paper}`));
    for (const { name } of pagedSizes) for (const paper of PUBLICATIONS.words.papers) expect(pairs).toContain(`${name} ${paper}`);
  });

  it('leave none of the long tests without anything to try', () => {
    for (const [name, sample] of Object.entries(chosen)) expect([name, sample.length > 0]).toEqual([name, true]);
  });
});
