import { describe, expect, it } from 'vitest';
import { isolate, isolateName, loadWords, splitIsolates, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';
import { told } from './ask-for-everything.ts';

const files = localesOnDisk();
/** The files of one language under the name of another. */
const asLanguage = (lang: string, model: string): LocaleFiles => Object.fromEntries(Object.entries(files)
  .filter(([path]) => path.startsWith(`${model}/`)).map(([path, text]) => [path.replace(`${model}/`, `${lang}/`), text]));
const own = (text: string): string => `\u2068${text}\u2069`;
const ltr = (text: string): string => `\u2066${text}\u2069`;

describe('words', () => {
  it('throw for a key that is not there', () => {
    expect(() => loadWords(files, 'fr').t('cautions.noise')).toThrow('locales/fr/cautions.json:1:1 cautions.noise: found no such key; add it');
  });

  it('throw for a placeholder without a value', () => {
    expect(() => loadWords(files, 'en').t('actions.wrap-side')).toThrow('{{side}}');
  });

  it('throw for a text with plural forms asked for without a count', () => {
    expect(() => loadWords(files, 'en').t('booklet.people')).toThrow('ask for it with a count');
  });

  it('tell every key that is asked for, without plural endings', () => {
    const asked: string[] = [];
    const { t } = loadWords(files, 'ar', (key) => asked.push(key));
    t('parts.post.counted', { count: 3 });
    t('booklet.chapters.parts');
    expect(asked).toEqual(['parts.post.counted', 'booklet.chapters.parts']);
  });

  // Unicode CLDR 48 plural rules of Arabic (CHECKS "Unicode and CLDR", R/C): 0 zero, 1 one, 2 two, 3–10 few, 11–99 many, 100–102 other, 103 few, 111 many.
  it('choose the Arabic plural forms by the rules of the CLDR', () => {
    const { t } = loadWords(files, 'ar');
    const said = [0, 1, 2, 3, 10, 11, 99, 100, 102, 103, 111].map((count) => t('parts.post.counted', { count }));
    expect(said).toEqual(['بلا قوائم', 'قائم واحد', 'قائمان', '3 قوائم', '10 قوائم', '11 قائمًا', '99 قائمًا', '100 قائم', '102 قائم', '103 قوائم', '111 قائمًا']);
  });

  // CLDR 48: in French 0 and 1 are "one".
  it('choose the French plural forms by the rules of the CLDR', () => {
    const { t } = loadWords(files, 'fr');
    expect([0, 1, 2].map((count) => t('parts.panel.counted', { count }))).toEqual(['0 panneau', '1 panneau', '2 panneaux']);
  });
});

describe('numbers', () => {
  it('stand between isolates together with their unit', () => {
    const words = loadWords(files, 'ar');
    expect(words.measure(637, 'mm')).toBe(ltr('637\u00a0mm'));
    expect(words.measures([1000, 500], 'mm')).toBe(ltr('1000\u00a0×\u00a0500\u00a0mm'));
    expect(words.times(4)).toBe(ltr('×4'));
    expect(words.measure(45, '°')).toBe(ltr('45°'));
    expect(words.measure(3, '1')).toBe(ltr('3'));
  });

  it('of time have the language\'s own units, and their own direction', () => {
    const english = loadWords(files, 'en');
    expect([english.duration(530), english.duration(120), english.duration(40)]).toEqual([own('8\u00a0h 50\u00a0min'), own('2\u00a0h'), own('40\u00a0min')]);
    expect(loadWords(files, 'ar').duration(280)).toBe(own('4\u00a0س 40\u00a0د'));
    // Swahili puts its unit first (CLDR 48, short units of sw; M).
    expect(loadWords(files, 'sw').duration(280)).toBe(own('saa\u00a04 dakika\u00a040'));
    for (const lang of ['ar', 'fa', 'fa-AF', 'ur', 'ps', 'ckb', 'am', 'ti', 'my', 'bn', 'el', 'uk']) expect(loadWords(files, lang).duration(280)).not.toMatch(/[a-z]/i);
  });

  it('that are measured have the digits and the decimal point of the drawings in every language', () => {
    for (const lang of ['fr', 'en', 'ar']) expect(loadWords(files, lang).measure(637.25, 'mm', 1)).toBe(ltr('637.3\u00a0mm'));
    const egyptian = loadWords(told(files, 'ar', { numbers: 'ar-EG' }), 'ar');
    expect([egyptian.times(14), egyptian.number(1500.5, 1), egyptian.duration(70)]).toEqual([ltr('×14'), '1500.5', own('1\u00a0س 10\u00a0د')]);
  });

  // CLDR 48: ar-EG counts in Arabic-Indic digits, bare ar in Latin ones (CHECKS, R/C).
  it('in a sentence have the digits that the language\'s file asks for', () => {
    const egyptian = loadWords(told(files, 'ar', { numbers: 'ar-EG' }), 'ar');
    expect(egyptian.t('parts.post.counted', { count: 12 })).toBe('١٢ قائمًا');
    expect(loadWords(files, 'ar').t('parts.post.counted', { count: 12 })).toBe('12 قائمًا');
  });

  it('are listed in the manner of the language', () => {
    expect(loadWords(files, 'fr').list(['a', 'b', 'c'])).toBe('a, b et c');
  });

  // Haitian Creole: the CLDR of Node 20 has neither its plurals nor its lists (C: Intl.PluralRules.supportedLocalesOf('ht') is empty).
  it('of a language that Unicode does not know go by the tag in its file, lists by commas', () => {
    const frenchNumbers = loadWords(told(asLanguage('ht', 'fr'), 'ht', { numbers: 'fr-HT' }), 'ht');
    expect([0, 1, 2].map((count) => frenchNumbers.t('parts.panel.counted', { count }))).toEqual(['0 panneau', '1 panneau', '2 panneaux']);
    expect(frenchNumbers.list(['a', 'b', 'c'])).toBe('a, b, c');
  });
});

describe('isolates', () => {
  it('are found again', () => {
    expect(splitIsolates(`a ${isolate('3 mm')} ${isolateName('عربي')}.`)).toEqual([
      { text: 'a ', dir: null }, { text: '3 mm', dir: 'ltr' }, { text: ' ', dir: null }, { text: 'عربي', dir: 'auto' }, { text: '.', dir: null },
    ]);
  });
});

describe('a faulty locale file', () => {
  const load = (changed: LocaleFiles): (() => unknown) => () => loadWords({ ...files, ...changed }, 'fr');

  it('is told with line and column', () => {
    expect(load({ 'fr/checks.json': '{\n  "mark": "a",\n  "mark": "b"\n}\n' })).toThrow(/^locales\/fr\/checks\.json:3:3 found a fault in the JSON text; /);
  });

  it('is told when it is missing', () => {
    const others = Object.entries(files).filter(([path]) => path !== 'fr/checks.json');
    expect(() => loadWords(Object.fromEntries(others), 'fr')).toThrow('locales/fr/checks.json:1:1 found no such file');
  });

  it('is told when a text is empty or no text', () => {
    expect(load({ 'fr/checks.json': '{"mark": 3}' })).toThrow('checks.mark: found 3; a text in quotes');
    expect(load({ 'fr/checks.json': '{"mark": " "}' })).toThrow('checks.mark: found " "; a text in quotes');
  });

  it('is told when the language says something odd about itself', () => {
    expect(load(told(files, 'fr', { numbers: 'x_y' }))).toThrow(/^locales\/fr\/about\.json:1:48 numbers: .*BCP 47/);
    expect(load(told(files, 'fr', { direction: 'down' }))).toThrow('direction');
  });
});
