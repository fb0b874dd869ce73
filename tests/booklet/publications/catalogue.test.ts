import { describe, expect, it } from 'vitest';
import { PAPERS, papersOf } from '../../../src/booklet/papers/index.ts';
import { copiesOfEditions } from '../../../src/booklet/publications/documents.ts';
import { comesOn, EDITION_PAPERS, EDITIONS, PUBLICATIONS } from '../../../src/booklet/publications/facts.ts';
import { loadWords } from '../../../src/booklet/words/index.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';

const locales = localesOnDisk();
const [en, fr, ar, ur] = [loadWords(locales, 'en'), loadWords(locales, 'fr'), loadWords(locales, 'ar'), loadWords(locales, 'ur')];

describe('the catalogue', () => {
  it('has each publication under its own name, on papers that there are', () => {
    for (const [name, publication] of Object.entries(PUBLICATIONS)) {
      expect(publication.name).toBe(name);
      expect(publication.papers.filter((paper) => !Object.hasOwn(PAPERS, paper))).toEqual([]);
      expect(new Set(publication.papers).size).toBe(publication.papers.length);
    }
  });

  // The command's help says “default: the first two” of both.
  it('begins with the two editions and the two papers that are made where none is named', () => {
    expect(EDITIONS.map(({ isUsual }) => isUsual)).toEqual(EDITIONS.map((_, index) => index < 2));
    expect(papersOf('full').map((paper) => PAPERS[paper].isUsual)).toEqual(papersOf('full').map((_, index) => index < 2));
  });

  it('has a name for each edition and paper on the page', () => {
    for (const { name } of EDITIONS) expect(en.t(`page.editions.${name}`)).not.toBe('');
    for (const paper of EDITION_PAPERS) expect(en.t(`page.papers.${paper}`)).not.toBe('');
  });

  it('marks every paper but one in the names of files, each otherwise', () => {
    const suffixes = Object.values(PAPERS).map(({ suffix }) => suffix);
    expect(new Set(suffixes).size).toBe(suffixes.length);
    expect(suffixes.filter((suffix) => suffix === '')).toHaveLength(1);
  });
});

describe('a half paper', () => {
  it('goes twice on its sheet, laid on its side, within a millimetre', () => {
    for (const name of papersOf('half')) {
      const { width, height, sheet } = PAPERS[name];
      expect(2 * width).toBeLessThanOrEqual(sheet.height);
      expect(height).toBeLessThanOrEqual(sheet.width);
      expect(sheet.height - 2 * width).toBeLessThanOrEqual(1);
      expect(comesOn(PUBLICATIONS.stitched, name)).toBe(true);
    }
  });
});

describe('the copies of editions', () => {
  const asked = { papers: ['a4', 'a5', 'a3'], languageSets: [[en], [ar, fr], [ur]], source: en } as const;
  const told = (copies: ReturnType<typeof copiesOfEditions>): readonly string[] => copies.map(({ edition, paper, format }) => `${edition} ${paper} ${format}`);

  it('come series by series, booklets paper by paper, each in the languages it takes', () => {
    expect(told(copiesOfEditions(['overview', 'words', 'pictures', 'wall'], asked))).toEqual([
      'pictures a4 page', 'words a4 page', 'words a4 page', 'words a4 page',
      'pictures a5 small', 'words a5 small', 'words a5 small', 'words a5 small',
      'wall a4 small', 'wall a4 small', 'wall a3 small', 'wall a3 small',
      'overview a4 thumb', 'overview a4 thumb',
    ]);
  });

  it('that have the same pages on two papers come one after the other, and are made once', () => {
    const both = copiesOfEditions(['words', 'pictures'], { ...asked, papers: ['a4', 'letter', 'a5'], languageSets: [[en], [ar, fr]] });
    expect(told(both)).toEqual([
      'pictures a4 page', 'words a4 page', 'words letter page', 'words a4 page', 'words letter page',
      'pictures letter page', 'pictures a5 small', 'words a5 small', 'words a5 small',
    ]);
    expect(both.map(({ laidFor }) => laidFor)).toEqual(['a4', 'common', 'common', 'common', 'common', 'letter', 'a5', 'a5', 'a5']);
    expect(told(copiesOfEditions(['words', 'pictures'], { ...asked, papers: ['letter'], languageSets: [[en]] }))).toEqual(['pictures letter page', 'words letter page']);
  });

  it('are of one direction of reading where the languages are', () => {
    expect(told(copiesOfEditions(['wall'], { ...asked, languageSets: [[en], [fr]] }))).toEqual(['wall a4 small', 'wall a3 small']);
    expect(told(copiesOfEditions(['wall'], { ...asked, languageSets: [[ar], [ur]] }))).toEqual(['wall a4 small', 'wall a3 small']);
    expect(copiesOfEditions([], asked)).toEqual([]);
  });
});
