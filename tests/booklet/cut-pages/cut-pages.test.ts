import { describe, expect, it } from 'vitest';
import { cutPages, surveyPages } from '../../../src/booklet/index.ts';
import { languagesIn, loadWords } from '../../../src/booklet/words/index.ts';
import { localesOnDisk, standInPlace } from '../pages/rack-booklet.ts';
import { cutInput, damagedOrder, smallOrder, smallPictures } from './orders.ts';

const text = (html: string): string => html.replace(/<[^>]+>/g, ' ').replace(/&nbsp;|\u00a0/g, ' ').replace(/\s+/g, ' ');
const languages = languagesIn(localesOnDisk());
/** Written in Arabic letters. */
const rightToLeft: readonly string[] = ['ar', 'ckb', 'fa', 'fa-AF', 'ps', 'ur'];

describe.each(languages)('the cut plan in %s', (lang) => {
  const { html, dir, pageCount } = cutPages(cutInput(smallOrder, { lang }));
  const words = loadWords(localesOnDisk(), lang);

  it('has a page to bring by, one of the pieces, and one for every different tube and panel', () => {
    expect(pageCount).toBe(4);
    expect(html.split('<section class="page"')).toHaveLength(5);
    expect(dir).toBe(rightToLeft.includes(lang) ? 'rtl' : 'ltr');
  });

  it('tells counts, letters, sizes and what the pieces become', () => {
    const told = text(html);
    expect(told).toContain('×1');
    expect(told).toContain('312 mm');
    expect(told).toContain('637 × 637 mm');
    expect(told).toContain(words.t('parts.post.name'));
    expect(told).toContain(words.t('items.stool.name'));
    expect(told).toContain(words.t('booklet.defer'));
  });

  it('keeps measures from turning round and gives every picture its words', () => {
    if (rightToLeft.includes(lang)) expect(html).toMatch(/<span dir="ltr" class="apart">637.×.637.mm<\/span>/);
    for (const [, alt] of html.matchAll(/role="img"[^>]*aria-label="([^"]*)"/g)) expect(alt?.trim()).not.toBe('');
  });
});

describe('the cut plan over damaged stock', () => {
  const told = text(cutPages(cutInput(damagedOrder)).html);

  it('names the pile, says what is crossed out, and where to saw with a wide kerf', () => {
    expect(told).toContain('crushed');
    expect(told).toContain('Crossed out: do not use.');
    expect(told).toContain('Saw beyond each mark');
    expect(told).toContain('the knife stops at their corners');
  });

  it('tells needed, there and short', () => { expect(told).toMatch(/Corner joint 16 10 6/); });
});

describe('many pieces', () => {
  it('go over to a further page', () => {
    const pieces = Array.from({ length: 60 }, (_, index) => ({ letter: `A${index}`, length: 300 + index, count: 1, uses: smallOrder.tubePieces[0]?.uses ?? [] }));
    expect(cutPages(cutInput({ ...smallOrder, tubePieces: [...smallOrder.tubePieces, ...pieces] })).pageCount).toBeGreaterThan(5);
  });
});

describe('the sheets to count by', () => {
  it.each(languages)('are three pages in %s with a box for every count', (lang) => {
    const { html, pageCount } = surveyPages({ paper: 'a4', words: loadWords(localesOnDisk(), lang), pictures: smallPictures, placePicture: standInPlace });
    expect(pageCount).toBe(3);
    expect(html.match(/class="total"/g)).toHaveLength(4 + 12 + 4);
  });
});
