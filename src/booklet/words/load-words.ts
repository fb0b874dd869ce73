import { createInstance, type i18n } from 'i18next';
import { isolate } from './isolates.ts';
import { languagesIn, readAbout, readWords, wordFiles, type About, type FlatWords, type LocaleFiles } from './locale-files.ts';
import { baseKey } from './plurals.ts';
import { wordsError } from './words-error.ts';

export type Values = Readonly<Record<string, string | number>>;

/** The words of one language. All texts may hold isolates, see `isolates.ts`. */
export interface Words {
  readonly lang: string;
  readonly about: About;
  /** Every language of the locale files: its BCP 47 tag by its own name. */
  readonly tags: Readonly<Record<string, string>>;
  /** Throws where the key or one of its placeholders is missing. Numbers come out in the language's digits. */
  readonly t: (key: string, values?: Values) => string;
  /** Whole numbers without grouping, others with at most `decimals` decimals. */
  readonly number: (value: number, decimals?: number) => string;
  /** A number with its unit's symbol, the same in every language, isolated: `637 mm`. Unit `1` is not written. */
  readonly measure: (value: number, unit: string, decimals?: number) => string;
  /** Hours and minutes, isolated: `8 h 50 min`. */
  readonly duration: (minutes: number) => string;
  /** Numbers joined by × with one unit after them, isolated: `1000 × 500 mm`. */
  readonly measures: (values: readonly number[], unit: string) => string;
  /** `×4`, isolated. */
  readonly times: (count: number) => string;
  /** `a, b and c` in the manner of the language. */
  readonly list: (items: readonly string[]) => string;
}

/**
 * Loads the words of `lang` from the texts of the locale files. `onAsk` hears every key that is asked for,
 * without its plural ending; `names` are the files to read. Throws where a file or field is missing or wrong.
 */
export function loadWords(files: LocaleFiles, lang: string, onAsk: (key: string) => void = () => undefined, names: readonly string[] = wordFiles): Words {
  const about = readAbout(files, lang);
  const number = numberFormat(about.numbers);
  const t = strictT(lang, readWords(files, lang, names), number, onAsk);
  const withUnit = (text: string, unit: string): string => isolate(`${text}${symbol(unit)}`);
  const list = new Intl.ListFormat(about.numbers, { style: 'long', type: 'conjunction' });
  return {
    lang,
    about,
    tags: Object.fromEntries(languagesIn(files).map((each) => [readAbout(files, each).name, each])),
    t,
    number,
    measure: (value, unit, decimals) => withUnit(number(value, decimals), unit),
    duration: (minutes) => isolate(durationParts(minutes).map(([value, unit]) => `${number(value)}${symbol(unit)}`).join('\u00a0')),
    measures: (values, unit) => withUnit(values.map((value) => number(value)).join('\u00a0×\u00a0'), unit),
    times: (count) => isolate(`×${number(count)}`),
    list: (items) => list.format(items),
  };
}

function durationParts(minutes: number): readonly (readonly [number, string])[] {
  const parts = [[Math.floor(minutes / 60), 'h'], [minutes % 60, 'min']] as const;
  return parts.filter(([value]) => value > 0);
}

function symbol(unit: string): string {
  if (unit === '1') return '';
  return unit === '°' ? unit : `\u00a0${unit}`;
}

function numberFormat(tag: string): Words['number'] {
  return (value, decimals = 0) => new Intl.NumberFormat(tag, { useGrouping: false, maximumFractionDigits: decimals }).format(value);
}

function strictT(lang: string, words: FlatWords, number: Words['number'], onAsk: (key: string) => void): Words['t'] {
  const known = new Set([...words.keys()].map(baseKey));
  const translator = startTranslator(lang, words, number);
  return (key, values = {}) => {
    onAsk(key);
    if (!known.has(key)) throw wordsError({ path: fileOf(lang, key), field: key, found: 'no such key', remedy: 'add it' });
    if (!words.has(key) && values['count'] === undefined) {
      throw wordsError({ path: fileOf(lang, key), field: key, found: 'a text with plural forms', remedy: 'ask for it with a count' });
    }
    return translator.t(key, { ...values });
  };
}

function startTranslator(lang: string, words: FlatWords, number: Words['number']): i18n {
  const translator = createInstance();
  translator.use({
    type: 'formatter',
    init: () => undefined,
    add: () => undefined,
    addCached: () => undefined,
    format: (value: unknown) => (typeof value === 'number' ? number(value, 1) : value),
  });
  void translator.init({
    lng: lang,
    fallbackLng: false,
    // The flat keys are looked up as they are.
    keySeparator: false,
    nsSeparator: false,
    initAsync: false,
    resources: { [lang]: { translation: Object.fromEntries(words) } },
    interpolation: { escapeValue: false, alwaysFormat: true },
    missingInterpolationHandler: (text: string, match: readonly string[]) => {
      throw wordsError({ path: `${lang}/`, field: match[0] ?? '', found: 'no value for this placeholder', remedy: `in "${text}"` });
    },
    parseMissingKeyHandler: (key) => {
      throw wordsError({ path: fileOf(lang, key), field: key, found: 'no form for this count', remedy: 'add all plural forms of the language' });
    },
  });
  return translator;
}

function fileOf(lang: string, key: string): string {
  return `${lang}/${key.split('.')[0] ?? key}.json`;
}
