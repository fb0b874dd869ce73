import { createInstance, type i18n } from 'i18next';
import { isolate, isolateName } from './isolates.ts';
import { languagesIn, readAbout, readWords, type About, type FlatWords } from './locale-files.ts';
import { wordFiles, type LocaleFiles, type WordFile } from './word-files.ts';
import { baseKey } from './plurals.ts';
import { currentReview, type Review } from './review.ts';
import { wordsError } from './words-error.ts';

export type Values = Readonly<Record<string, string | number>>;

/** The words of one language. All texts may hold isolates, see `isolates.ts`. */
export interface Words {
  readonly lang: string;
  readonly about: About;
  /** Its language and script as Unicode names them: `ur`, `Arab`. */
  readonly written: { readonly language: string; readonly script: string };
  /** Who read the words over as they stand; null for a draft. */
  readonly review: Review | null;
  /** Every language of the locale files: its BCP 47 tag by its own name. */
  readonly tags: Readonly<Record<string, string>>;
  /** Throws where the key or one of its placeholders is missing. Numbers in a sentence come out in the language's digits. */
  readonly t: (key: string, values?: Values) => string;
  /**
   * A figure that is measured, matched with a drawing or stands alone: Latin digits and a decimal point, as the
   * drawings have it. Whole numbers without grouping, others with at most `decimals` decimals.
   */
  readonly number: (value: number, decimals?: number) => string;
  /** A figure with its unit's symbol, the same in every language, isolated: `637 mm`. Unit `1` is not written. */
  readonly measure: (value: number, unit: string, decimals?: number) => string;
  /** Hours and minutes as the language writes them, isolated: `8 h 50 min`. Figures as the drawings have them. */
  readonly duration: (minutes: number) => string;
  /** Numbers joined by × with one unit after them, isolated: `1000 × 500 mm`. */
  readonly measures: (values: readonly number[], unit: string, sign?: string) => string;
  /** `×4`, isolated. */
  readonly times: (count: number) => string;
  /** `a, b and c` in the manner of the language; with commas alone where Unicode does not know it. */
  readonly list: (items: readonly string[]) => string;
}

/**
 * Loads the words of `lang` from the texts of the locale files. `onAsk` hears every key that is asked for,
 * without its plural ending; `names` are the files to read. Throws where a file or field is missing or wrong.
 */
export function loadWords(files: LocaleFiles, lang: string, onAsk: (key: string) => void = () => undefined, names: readonly WordFile[] = wordFiles): Words {
  const about = readAbout(files, lang);
  const number = numberFormat('en');
  const t = strictT(lang, readWords(files, lang, names), about.numbers, onAsk);
  const withUnit = (text: string, unit: string): string => isolate(`${text}${symbol(unit)}`);
  return {
    lang,
    about,
    written: writtenIn(lang),
    review: currentReview(files, lang),
    tags: Object.fromEntries(languagesIn(files).map((each) => [readAbout(files, each).name, each])),
    t,
    number,
    measure: (value, unit, decimals) => withUnit(number(value, decimals), unit),
    duration: (minutes) => isolateName(durationParts(minutes).map(([value, unit]) => t(`booklet.${unit}`, { value: number(value) }).replaceAll(' ', '\u00a0')).join(' ')),
    measures: (values, unit, sign = '') => withUnit(sign + values.map((value) => number(value)).join('\u00a0×\u00a0'), unit),
    times: (count) => isolate(`×${number(count)}`),
    list: listFormat(lang, about.numbers),
  };
}

function writtenIn(lang: string): Words['written'] {
  const { language, script = '' } = new Intl.Locale(lang).maximize();
  return { language, script };
}

function durationParts(minutes: number): readonly (readonly [number, string])[] {
  const parts = [[Math.floor(minutes / 60), 'hours'], [minutes % 60, 'minutes']] as const;
  return parts.filter(([value]) => value > 0);
}

function symbol(unit: string): string {
  if (unit === '1') return '';
  return unit === '°' ? unit : `\u00a0${unit}`;
}

function numberFormat(tag: string): Words['number'] {
  const formats = new Map<number, Intl.NumberFormat>();
  return (value, decimals = 0) => {
    const format = formats.get(decimals) ?? new Intl.NumberFormat(tag, { useGrouping: false, maximumFractionDigits: decimals });
    formats.set(decimals, format);
    return format.format(value);
  };
}

/** With the language's own "and" where Unicode knows it; the tag for numbers may be that of another language. */
function listFormat(lang: string, tag: string): Words['list'] {
  const [own, numbers] = [new Intl.Locale(lang), new Intl.Locale(tag)].map((locale) => locale.language);
  const known = own === numbers && Intl.ListFormat.supportedLocalesOf(tag).length > 0;
  if (!known) return (items) => items.join(new Intl.Locale(lang).maximize().script === 'Arab' ? '، ' : ', ');
  const format = new Intl.ListFormat(tag, { style: 'long', type: 'conjunction' });
  return (items) => format.format(items);
}

const NOTHING: Values = {};

function strictT(lang: string, words: FlatWords, tag: string, onAsk: (key: string) => void): Words['t'] {
  const known = new Set([...words.keys()].map(baseKey));
  const translator = startTranslator(lang, words, tag);
  return (key, values = NOTHING) => {
    onAsk(key);
    if (!known.has(key)) throw wordsError({ path: fileOf(lang, key), field: key, found: 'no such key', remedy: 'add it' });
    if (!words.has(key) && values['count'] === undefined) {
      throw wordsError({ path: fileOf(lang, key), field: key, found: 'a text with plural forms', remedy: 'ask for it with a count' });
    }
    // Most texts have no places to fill, and no other forms are looked for: they need no translator.
    const plain = values === NOTHING ? words.get(key) : undefined;
    if (plain !== undefined && plain !== '' && !plain.includes('{{')) return plain;
    // A text says itself: one that names other keys, as `$t(…)`, is printed as it stands.
    return translator.t(key, { ...values, nest: false });
  };
}

/** Plural forms go by the same tag as the digits: Unicode has none for some languages, as for Haitian Creole. */
function startTranslator(lang: string, words: FlatWords, tag: string): i18n {
  const number = numberFormat(tag);
  const translator = createInstance();
  translator.use({
    type: 'formatter',
    init: () => undefined,
    add: () => undefined,
    addCached: () => undefined,
    format: (value: unknown) => (typeof value === 'number' ? number(value, 1) : value),
  });
  void translator.init({
    lng: tag,
    load: 'currentOnly',
    fallbackLng: false,
    // The flat keys are looked up as they are.
    keySeparator: false,
    nsSeparator: false,
    initAsync: false,
    resources: { [tag]: { translation: Object.fromEntries(words) } },
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
