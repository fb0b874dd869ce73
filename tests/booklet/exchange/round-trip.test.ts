import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exportWords, importWords } from '../../../src/booklet/exchange/index.ts';
import { languagesIn, readAbout, wordFiles, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';
import { firstUnseen } from '../../../src/read/index.ts';
import { fileText, languageFiles, smallLocales } from './small-locales.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const there = (locales: LocaleFiles, lang: string): Uint8Array => bytes(exportWords(locales, lang, [], 'pictures').xliff);
const without = (locales: LocaleFiles, ...gone: readonly string[]): LocaleFiles =>
  Object.fromEntries(Object.entries(locales).filter(([path]) => !gone.some((start) => path.startsWith(start))));

/** What may stand in a text: letters, what XML marks up or cannot hold, line ends, marks of direction that end with their letter, whole and broken placeholders. */
const piece = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 6 }),
  fc.constantFrom('<b>', '</source>', '&', '&amp;', '&#xD;', ']]>', '<!--', '"', '\'', '\r\n', '\r', '\t', '\n', ' ', '\ufffe', '\ud83d', '\ude00', '😀',
    '\u200f', '\u061c', '\u200c', '\u00a0', 'قائم', '}}', '{'),
).filter((text) => firstUnseen(text) === null);
const placeholder = fc.constantFrom('{{side}}', '{{count}}', '{{a<b}}', '{{"&"}}');
/** A text, and the same placeholders among other pieces: its translation. */
const pair = fc.record({
  pieces: fc.array(piece, { minLength: 1, maxLength: 8 }), others: fc.array(piece.map((text) => text.replaceAll('{', '(')), { minLength: 1, maxLength: 8 }),
  placeholders: fc.uniqueArray(placeholder, { maxLength: 3 }), at: fc.nat(),
}).map(({ pieces, others, placeholders, at }) => ({
  source: spread(pieces.map((text) => text.replaceAll('{', '(')), placeholders, at),
  target: spread(others, [...placeholders].reverse(), at + 1),
})).filter(({ source, target }) => source.trim() !== '' && target.trim() !== '');

/** The placeholders put between the pieces, the first at the place `at`. */
function spread(pieces: readonly string[], placeholders: readonly string[], at: number): string {
  const all = [...pieces];
  placeholders.forEach((each, index) => all.splice((at + index) % (all.length + 1), 0, each));
  return all.join('');
}

const french = (texts: Readonly<Record<string, string>>): LocaleFiles => languageFiles('fr', { numbers: 'fr' }, { checks: texts });
const english = (texts: Readonly<Record<string, string>>): LocaleFiles => languageFiles('en', { source: true }, { checks: texts });

describe('words that go out and come back', () => {
  it('are the same bytes, whatever the texts hold', () => {
    fc.assert(fc.property(fc.array(pair, { minLength: 1, maxLength: 4 }), (texts) => {
      const keyed = (which: 'source' | 'target'): Record<string, string> => Object.fromEntries(texts.map((text, index) => [`text-${index}`, text[which]]));
      const locales = { ...english(keyed('source')), ...french(keyed('target')) };
      const sent = there(locales, 'fr');
      expect(importWords(sent, 'fr.xlf', locales).changed).toEqual({});
      // Into a project that has no French yet come the same files.
      expect(importWords(sent, 'fr.xlf', without(locales, 'fr/')).changed['fr/checks.json']).toBe(locales['fr/checks.json']);
    }), { numRuns: 300 });
  });

  it('are the same bytes for every language of the project', () => {
    const locales = localesOnDisk();
    const translated = languagesIn(locales).filter((lang) => !readAbout(locales, lang).source);
    expect(translated.length).toBeGreaterThan(1);
    for (const lang of translated) expect(importWords(there(locales, lang), `${lang}.xlf`, locales).changed).toEqual({});
  });

  it('change one text where one was changed, and leave the order of the file', () => {
    const sent = exportWords(smallLocales, 'ar', [], 'pictures').xliff;
    const { changed, lang } = importWords(bytes(sent.replace('>علّق حبلين على ', '>شدّ حبلين على ')), 'ar.xlf', smallLocales);
    expect(lang).toBe('ar');
    expect(changed).toEqual({ 'ar/actions.json': smallLocales['ar/actions.json']?.replace('علّق حبلين', 'شدّ حبلين') });
  });

  it('come back in UTF-16, with a byte order mark, as CDATA and with annotations', () => {
    const sent = exportWords(smallLocales, 'ar', [], 'pictures').xliff;
    const utf16 = new Uint8Array(Buffer.from(`\ufeff${sent.replace('encoding="UTF-8"', 'encoding="UTF-16"')}`, 'utf16le'));
    expect(importWords(utf16, 'ar.xlf', smallLocales).changed).toEqual({});
    expect(importWords(bytes(`\ufeff${sent}`), 'ar.xlf', smallLocales).changed).toEqual({});
    const marked = sent.replace('>الشد بالحبال<', '><mrk id="m1" translate="yes">الشد</mrk><sm id="m2" type="term"/><![CDATA[ بالحبال]]><em startRef="m2"/><');
    expect(marked).not.toBe(sent);
    expect(importWords(bytes(marked), 'ar.xlf', smallLocales).changed).toEqual({});
  });

  // #removingcodes: a tool may turn a code into text.
  it('come back with a placeholder as plain text, or without its reference', () => {
    const sent = exportWords(smallLocales, 'ar', [], 'pictures').xliff;
    const [, target = ''] = /<target>(لفّ .*?)<\/target>/.exec(sent) ?? [];
    expect(target).toContain('<ph ');
    for (const code of ['{{side}}', '<ph id="p1"/>']) {
      const returned = sent.replace(target, target.replace(/<ph .*?\/>/, code));
      expect(importWords(bytes(returned), 'ar.xlf', smallLocales).changed).toEqual({});
    }
  });
});

describe('a language', () => {
  it('may have some of its texts: the new ones come after those they follow in the source', () => {
    const part = { ...smallLocales, 'ar/actions.json': fileText({ 'wrap-side': 'لفّ {{side}}.', brace_other: 'علّق {{count}} على {{side}}.' }) };
    const { xliff, texts, translated } = exportWords(part, 'ar', [], 'pictures');
    const others = wordFiles.length - 1; // one text in each other file
    expect([texts, translated]).toEqual([9 + others, 2 + others]);
    expect(xliff.match(/state="initial"/g)).toHaveLength(7);
    const { changed } = importWords(there(smallLocales, 'ar'), 'ar.xlf', part);
    expect(Object.keys(changed)).toEqual(['ar/actions.json']);
    expect(Object.keys(JSON.parse(changed['ar/actions.json'] ?? '') as object)).toEqual([
      'sides', 'names', 'wrap-side', 'brace_zero', 'brace_one', 'brace_two', 'brace_few', 'brace_many', 'brace_other',
    ]);
  });

  it('begins with its texts and what its tag tells: name, direction by script, numbers, a draft', () => {
    const sent = exportWords(smallLocales, 'ar', [], 'pictures').xliff.replace('trgLang="ar"', 'trgLang="ur"').replaceAll(/<unit id="actions.brace_(zero|two|few|many)"[^]*?<\/unit>/g, '')
      .replace('واحدًا', '{{count}}');
    const { changed } = importWords(bytes(sent), 'ur.xlf', smallLocales);
    expect(Object.keys(changed)).toEqual([...Object.keys(smallLocales).filter((path) => path.startsWith('ar/') && !path.endsWith('about.json')).map((path) => path.replace('ar', 'ur')), 'ur/about.json']);
    expect(readAbout({ ...smallLocales, ...changed }, 'ur')).toEqual({ name: 'اردو', direction: 'rtl', numbers: 'ur', textScale: 1.12, source: false, reviewed: null });
  });

  it('that has its about.json alone keeps it', () => {
    const started = without(smallLocales, ...wordFiles.map((name) => `ar/${name}`));
    const { changed } = importWords(there(smallLocales, 'ar'), 'ar.xlf', started);
    expect({ ...started, ...changed }).toEqual(smallLocales);
  });
});
