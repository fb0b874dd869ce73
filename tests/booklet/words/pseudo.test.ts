import { describe, expect, it } from 'vitest';
import { bookletPages } from '../../../src/booklet/pages/index.ts';
import { letterCoverage } from '../../../src/booklet/print/fonts.ts';
import { describeWordsFault, loadWords, pseudoLanguage, pseudoText, readWords, withPseudoLanguage } from '../../../src/booklet/words/index.ts';
import { localesOnDisk, rackInput } from '../pages/rack-booklet.ts';
import { askForEverything } from './ask-for-everything.ts';
import { compareLanguages } from './compare-languages.ts';

const files = withPseudoLanguage(localesOnDisk());
const lang = pseudoLanguage(files);

describe('the made-up language', () => {
  it('has a private-use tag whose numbers and plurals Intl knows', () => {
    expect(lang).toBe('en-x-long');
    expect(new Intl.PluralRules(lang).resolvedOptions().locale).toBe('en');
    expect(loadWords(files, lang).about).toMatchObject({ name: '[Ļööñğ]', source: false, reviewed: null });
  });

  it('has every text of the source language, with the same placeholders and plural forms', () => {
    expect(compareLanguages(files).map(describeWordsFault)).toEqual([]);
    expect(readWords(files, lang).size).toBe(readWords(files, 'en').size);
  });

  it('has each text in brackets, in letters of its own, and two fifths longer', () => {
    expect(pseudoText('Push {{count}} long tubes in')).toBe('[Þûûšĥ {{count}} ļööñğ ţûûƀééš îîñ öñ]');
    const source = readWords(files, 'en');
    const length = (text: string): number => text.replace(/\{\{.*?\}\}/g, '').length;
    for (const [key, text] of readWords(files, lang)) {
      expect(text, key).toMatch(/^\[.*\]$/s);
      expect(text.replace(/\{\{.*?\}\}/g, ''), key).not.toMatch(/[A-Za-z]/);
      // The brackets add two.
      const was = length(source.get(key) ?? '');
      expect(length(text) - 2, key).toBeGreaterThanOrEqual(1.4 * was - 1);
      expect(length(text) - 2, key).toBeLessThan(1.7 * was + 2);
    }
  });

  it('is written in letters that the booklets\' font has', () => {
    const covered = letterCoverage(['en']);
    const letters = new Set([...readWords(files, lang).values()].join(''));
    expect([...letters].filter((letter) => !covered(letter.codePointAt(0) ?? 0))).toEqual([]);
  });
});

/** What the brackets leave out: text that no locale file has, or that was cut from its brackets. */
function outside(text: string): string {
  let depth = 0;
  let left = '';
  for (const letter of text) {
    if (letter === '[') depth += 1;
    else if (letter === ']') depth -= 1;
    else if (depth === 0) left += letter;
    if (depth < 0) throw new Error(`a bracket closes that none opened, after: …${left.slice(-60)}`);
  }
  if (depth !== 0) throw new Error(`${depth} brackets are not closed`);
  return left;
}

/**
 * Letters that stand on a page in every language: symbols of units, letters of lengths, the mark of the content, names of
 * languages in themselves (listed in the manner of `Intl`) and their codes. Sources of limits are cited as published.
 */
const everywhere = (text: string): string => text
  .replaceAll('3f9c1a7e', '')
  .replaceAll(/\u2066(0123abcd|crushed|hatch)\u2069/g, ' ') // the mark of the content, and piles named by who counted them
  .replaceAll(/(?<!\p{L})(mm|kg|kN|N|h|min|m|MPa|kPa|rad)(?!\p{L})/gu, ' ')
  .replaceAll(/\u2066([A-W]|en|fr|ar)\u2069/g, ' ')
  .replaceAll(/[ØR][\d.]+/g, ' ')
  .replace(/^(, )*,? ?and $/, ' ') // between names that are listed by `Intl`
  .replaceAll(/English|Français|( and *)?العربية/g, '');

/** Texts of the pages as they are read, and those that are heard. Isolates are put back for the spans that took their place. */
function textsOf(html: string): readonly string[] {
  const heard = [...html.matchAll(/ (?:aria-label|alt|title)="([^"]*)"/g)].map(([, text = '']) => text);
  const read = html
    .replace(/<span class="source".*?<\/span>/gs, '')
    .replaceAll(/<span dir="ltr" class="apart">([^<]*)<\/span>/g, '\u2066$1\u2069')
    .replaceAll(/<svg.*?<\/svg>/gs, (svg) => (svg.includes('data-picture') ? '' : svg))
    // The list of languages stands in spans; its words are Intl's.
    .replaceAll(/<span dir="auto" class="apart">([^<]*)<\/span>/g, '$1')
    .replaceAll(/<[^>]*>/g, ' ');
  return [...heard, read];
}

const bare = (html: string): readonly string[] => textsOf(html).map((text) => everywhere(outside(text))).flatMap((text) => text.match(/[^\s]*\p{L}[^\s]*/gu) ?? []);

describe('pages in the made-up language', () => {
  it('show and say nothing that is not from the locale files', () => {
    const seen: string[] = [];
    askForEverything(lang, () => undefined, files, (html) => { seen.push(html); });
    expect(seen.length).toBeGreaterThan(10);
    expect([...new Set(seen.flatMap(bare))]).toEqual([]);
  });

  it('would show a text that stands in the code', () => {
    const { html } = bookletPages(rackInput({ lang, files }));
    expect(bare(html)).toEqual([]);
    expect(bare(html.replace('</h1>', ' and more</h1>'))).toEqual(['and', 'more']);
    expect(bare(html.replace(/aria-label="[^"]*"/, 'aria-label="Step"'))).toEqual(['Step']);
    expect(() => bare(html.replace(']', ''))).toThrow('not closed');
  });

  it('have the title in it too', () => {
    expect(bookletPages(rackInput({ lang, files })).title).toMatch(/^\[.*\]$/);
  });
});
