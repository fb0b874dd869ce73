import { describe, expect, it } from 'vitest';
import { bookletPages } from '../../../src/booklet/pages/index.ts';
import { currentReview, isDay, isName, loadWords, readAbout, textsMark, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import { localesOnDisk, rackInput } from '../pages/rack-booklet.ts';
import { reviewed, told } from './ask-for-everything.ts';

const files = localesOnDisk();
const french = reviewed(files, 'fr');
const changed = (path: string, was: string, now: string): LocaleFiles => {
  const text = french[path]?.replace(was, now) ?? '';
  expect(text).not.toBe(french[path]);
  return { ...french, [path]: text };
};

describe('a review', () => {
  it('holds for the texts as they were read', () => {
    expect(currentReview(french, 'fr')).toEqual({ by: 'A. Reader', on: '2026-03-14' });
    expect(currentReview(files, 'fr')).toBeNull();
  });

  it('lapses when a text of the language changes, or the text it translates', () => {
    expect(currentReview(changed('fr/cautions.json', 'Lame', 'Lames'), 'fr')).toBeNull();
    expect(currentReview(changed('en/cautions.json', 'Wear a mask and cut wet.', 'Wear a mask and goggles and cut wet.'), 'fr')).toBeNull();
  });

  it('stays when another language changes, or the order and the spacing of the file', () => {
    expect(currentReview(changed('ar/checks.json', '"mark": "', '"mark": "ا'), 'fr')).not.toBeNull();
    const turned = Object.fromEntries(Object.entries(JSON.parse(french['fr/checks.json'] ?? '') as object).reverse());
    expect(currentReview({ ...french, 'fr/checks.json': JSON.stringify(turned) }, 'fr')).not.toBeNull();
  });

  it('has a mark of sixteen characters that depends on the texts alone', () => {
    expect(textsMark(files, 'fr')).toMatch(/^[0-9a-f]{16}$/);
    expect(textsMark(files, 'fr')).toBe(textsMark(told(files, 'fr', { name: 'Francais', textScale: 1.1 }), 'fr'));
    expect(textsMark(files, 'fr')).not.toBe(textsMark(files, 'ar'));
  });
});

describe('the last pages', () => {
  const colophon = (locales: LocaleFiles): string => bookletPages({ ...rackInput({ lang: 'fr' }), words: loadWords(locales, 'fr') }).html.replaceAll(/<[^>]*>/g, '');

  it('name the reviewer and the day', () => {
    expect(colophon(french)).toContain('Traduction relue par A. Reader (2026-03-14).');
  });

  it('say that a translation is a draft before its review and after a change', () => {
    const draft = loadWords(files, 'fr').t('booklet.colophon.draft').replaceAll('\'', '&#x27;');
    expect(colophon(files)).toContain(draft);
    const lapsed = colophon(changed('fr/checks.json', '"mark": "', '"mark": "— '));
    expect(lapsed).toContain(draft);
    expect(lapsed).not.toContain('A. Reader');
  });
});

describe('about.json', () => {
  const about = (text: string): (() => unknown) => () => readAbout({ ...files, 'fr/about.json': text }, 'fr');
  const lines = (last: string): string => files['fr/about.json']?.replace('"reviewed": null', last) ?? '';

  it('is refused with the field of old', () => {
    expect(about(lines('"reviewer": null'))).toThrow('locales/fr/about.json:7:15 reviewer: found a field of old; write "reviewed": null in its place; foldwright words import --reviewed-by enters a review');
  });

  it.each([
    ['a day that no calendar has', '"reviewed": { "by": "A", "on": "2026-02-30", "of": "0123456789abcdef" }', /:7:34 reviewed\.on: found a value that does not fit; a day such as "2026-03-14"/],
    ['a name that turns the text round', '"reviewed": { "by": "A\\u202e", "on": "2026-02-28", "of": "0123456789abcdef" }', /:7:23 reviewed\.by: found a value that does not fit; a name/],
    ['no mark', '"reviewed": { "by": "A", "on": "2026-02-28" }', /:7:15 reviewed\.of: found a value that does not fit; /],
    ['a name alone', '"reviewed": "A. Reader"', /:7:15 reviewed: found a value that does not fit; /],
    ['no word on a review', '"textScales": 1', /about\.json:1:1 reviewed: found a value that does not fit; /],
  ])('is refused with %s', (_name, last, message) => {
    expect(about(lines(last))).toThrow(message);
  });

  it('knows days and names', () => {
    expect(['2024-02-29', '2026-12-31'].map(isDay)).toEqual([true, true]);
    expect(['2023-02-29', '2026-13-01', '14.3.2026', '2026-3-4', '', '2026-03-14T10:00'].map(isDay)).toEqual([false, false, false, false, false, false]);
    expect(['Ana', 'محمد‌رضا', 'Ní Bhriain-O’Neill'].map(isName)).toEqual([true, true, true]);
    expect(['', ' Ana', 'A\nB', 'A\u2066B', 'x'.repeat(101)].map(isName)).toEqual([false, false, false, false, false]);
  });
});
