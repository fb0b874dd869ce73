import { describe, expect, it } from 'vitest';
import { bookletsOfSize, paperGroups } from '../../src/page/paper-groups.ts';

describe('the runs that an order\'s papers take', () => {
  it('are one, unless some papers are stitched and others cannot be', () => {
    expect(paperGroups({ papers: ['a4', 'a5'], stitched: false })).toEqual([{ papers: ['a4', 'a5'], stitched: false }]);
    expect(paperGroups({ papers: ['a4', 'letter'], stitched: true })).toEqual([{ papers: ['a4', 'letter'], stitched: false }]);
    expect(paperGroups({ papers: ['half-letter', 'a5'], stitched: true })).toEqual([{ papers: ['half-letter', 'a5'], stitched: true }]);
    expect(paperGroups({ papers: ['a5', 'a4'], stitched: true })).toEqual([{ papers: ['a4'], stitched: false }, { papers: ['a5'], stitched: true }]);
  });
});

describe('the booklets of a size', () => {
  it('are one of words for each language, and one of pictures for all', () => {
    expect(bookletsOfSize({ langs: ['en', 'fr', 'ar'], editions: ['words', 'pictures'], papers: ['a4', 'a5'] })).toBe(8);
    expect(bookletsOfSize({ langs: [], editions: ['pictures'], papers: ['a4'] })).toBe(1);
  });
});
