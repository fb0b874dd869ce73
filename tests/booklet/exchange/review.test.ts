import { describe, expect, it } from 'vitest';
import { exportWords, importWords } from '../../../src/booklet/exchange/index.ts';
import { currentReview, readAbout, wordFiles, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import { smallLocales } from './small-locales.ts';

const review = { by: 'Amina Haddad', on: '2026-03-14' };
const xliff = (locales: LocaleFiles): string => exportWords(locales, 'ar', [], 'pictures').xliff;
const taken = (text: string, locales: LocaleFiles, by: typeof review | null) => importWords(new TextEncoder().encode(text), 'ar.xlf', locales, by);
const read = xliff(smallLocales).replaceAll('state="translated"', 'state="reviewed"').replace('state="reviewed"', 'state="final"');

describe('a review that comes with an import', () => {
  const { changed, review: holds, lapsed } = taken(read, smallLocales, review);
  const after = { ...smallLocales, ...changed };

  it('is entered for the texts as they came back', () => {
    expect(Object.keys(changed)).toEqual(['ar/about.json']);
    expect([holds, lapsed, currentReview(after, 'ar')]).toEqual([review, null, review]);
    expect(readAbout(after, 'ar').reviewed).toMatchObject(review);
  });

  it('is entered with the changes it brings, and after them', () => {
    const both = taken(read.replace('>الشد بالحبال<', '>الشدّ<'), smallLocales, review);
    expect(Object.keys(both.changed)).toEqual(['ar/actions.json', 'ar/about.json']);
    expect(both.review).toEqual(review);
  });

  it('shows in the states of the next export, and comes back as the same bytes', () => {
    const next = xliff(after);
    expect(next.match(/state="(?!reviewed)/g)).toBeNull();
    expect(taken(next, after, null)).toMatchObject({ changed: {}, review, lapsed: null });
  });

  it('lapses with a later change, and the states tell so', () => {
    const later = taken(xliff(after).replace('>الشد بالحبال<', '>الشدّ<'), after, null);
    expect(later).toMatchObject({ review: null, lapsed: review });
    expect(xliff({ ...after, ...later.changed }).match(/state="reviewed"/g)).toBeNull();
  });

  it('is refused while a text is not marked as reviewed, told once with the number of others', () => {
    const more = 9 + wordFiles.length - 2; // nine texts of actions, one in each other file
    expect(() => taken(xliff(smallLocales), smallLocales, review)).toThrow(new RegExp(`^ar\\.xlf:\\d+:5 booklet\\.one: found state "translated", as in ${more} more, would be right: reviewed or final in every segment, because --reviewed-by is given$`));
  });

  it('is refused where a file was left out', () => {
    expect(() => taken(read.replace(/ *<file id="items"[^]*<\/file>\n/u, ''), smallLocales, review)).toThrow(/file: found no file "items", would be right: every file, as exported/);
  });
});
