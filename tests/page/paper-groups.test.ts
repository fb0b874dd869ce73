import { describe, expect, it } from 'vitest';
import { bookletsOfSize, bookletsOffered, directionsOf, editionsOffered, papersOffered, runsOfItem } from '../../src/page/paper-groups.ts';
import { localesOnDisk } from '../booklet/pages/rack-booklet.ts';

describe('the runs that an order takes for each item', () => {
  const editions = ['pictures', 'words'];

  it('are one, unless some papers are stitched and others cannot be', () => {
    expect(runsOfItem({ editions, papers: ['a4', 'a5'], stitched: false })).toEqual([{ editions, papers: ['a4', 'a5'], stitched: false }]);
    expect(runsOfItem({ editions, papers: ['a4', 'letter'], stitched: true })).toEqual([{ editions, papers: ['a4', 'letter'], stitched: false }]);
    expect(runsOfItem({ editions, papers: ['half-letter', 'a5'], stitched: true })).toEqual([{ editions, papers: ['half-letter', 'a5'], stitched: true }]);
    expect(runsOfItem({ editions, papers: ['a5', 'a4'], stitched: true })).toEqual([{ editions, papers: ['a4'], stitched: false }, { editions, papers: ['a5'], stitched: true }]);
  });

  it('leave out what comes on none of the papers, and papers for none of the editions', () => {
    expect(runsOfItem({ editions: ['wall'], papers: ['a5', 'a3'], stitched: false })).toEqual([{ editions: ['wall'], papers: ['a3'], stitched: false }]);
    expect(runsOfItem({ editions: ['words', 'wall', 'overview'], papers: ['a3', 'a5'], stitched: true }))
      .toEqual([{ editions: ['wall'], papers: ['a3'], stitched: false }, { editions: ['words'], papers: ['a5'], stitched: true }]);
    expect(runsOfItem({ editions: ['overview'], papers: ['a5'], stitched: false })).toEqual([]);
  });
});

describe('the booklets of a size', () => {
  it('are one of words for each language, and one of pictures for all', () => {
    expect(bookletsOfSize({ langs: ['en', 'fr', 'ar'], editions: ['words', 'pictures'], papers: ['a4', 'a5'] }, 2)).toBe(8);
    expect(bookletsOfSize({ langs: [], editions: ['pictures'], papers: ['a4'] }, 2)).toBe(1);
  });

  it('are posters for each direction of reading, on the papers they come on', () => {
    expect(bookletsOfSize({ langs: ['en', 'ar'], editions: ['wall', 'overview'], papers: ['a4', 'a3', 'a5'] }, 2)).toBe(6);
    const locales = localesOnDisk();
    expect([[], ['en', 'fr'], ['fr', 'ar'], ['ur+fr']].map((langs) => directionsOf(locales, langs))).toEqual([2, 1, 2, 1]);
  });
});

describe('what the page offers', () => {
  it('is every edition, words first, and every paper, small ones last', () => {
    expect(editionsOffered.map(({ name }) => name)).toEqual(['words', 'pictures', 'wall', 'overview']);
    expect(bookletsOffered.map(({ name }) => name)).toEqual(['words', 'pictures']);
    expect(papersOffered).toEqual(['a4', 'letter', 'a3', 'a5', 'half-letter']);
  });
});
