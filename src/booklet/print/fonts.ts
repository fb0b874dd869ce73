import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const WEIGHTS = [400, 700] as const;

/** A font family and the subsets of it that a script needs, as named in the font packages. */
interface ScriptFont {
  readonly family: string;
  readonly fontPackage: string;
  readonly subsets: readonly string[];
  /** Set with the font's own space, where that is narrower than Latin's: then the font's height also places the lines. */
  readonly ownSpace?: true;
}

const LATIN: ScriptFont = { family: 'Noto Sans', fontPackage: 'noto-sans', subsets: ['latin', 'latin-ext', 'vietnamese'] };

/** ISO 15924 script → its font. Another script is one more line here and one more package. */
const SCRIPT_FONTS: Readonly<Record<string, ScriptFont>> = {
  Arab: { family: 'Noto Sans Arabic', fontPackage: 'noto-sans-arabic', subsets: ['arabic'] },
  Beng: { family: 'Noto Sans Bengali', fontPackage: 'noto-sans-bengali', subsets: ['bengali'] },
  Cyrl: { family: 'Noto Sans', fontPackage: 'noto-sans', subsets: ['cyrillic', 'cyrillic-ext'] },
  Deva: { family: 'Noto Sans', fontPackage: 'noto-sans', subsets: ['devanagari'] },
  Ethi: { family: 'Noto Sans Ethiopic', fontPackage: 'noto-sans-ethiopic', subsets: ['ethiopic'] },
  Grek: { family: 'Noto Sans', fontPackage: 'noto-sans', subsets: ['greek', 'greek-ext'] },
  Latn: LATIN,
  Mymr: { family: 'Noto Sans Myanmar', fontPackage: 'noto-sans-myanmar', subsets: ['myanmar'] },
};

/** Languages that are read in another hand than the rest of their script: Urdu hangs its words in Nastaliq. */
const LANGUAGE_FONTS: Readonly<Record<string, ScriptFont>> = {
  ur: { family: 'Noto Nastaliq Urdu', fontPackage: 'noto-nastaliq-urdu', subsets: ['arabic'], ownSpace: true },
};

/** One language of each font: what a printer loads unless told otherwise. */
export const PRINTABLE_LANGS: readonly string[] = ['am', 'ar', 'bn', 'el', 'en', 'hi', 'my', 'uk', 'ur'];

/**
 * `@font-face` rules with the fonts inside as data URIs, and a `:lang()` rule for each language.
 * Latin is always there. No system font is named and bold is never made up, so a letter that
 * none of these fonts has shows up as a foreign face (see `Printer.measure`).
 * @param langs BCP 47 tags.
 * @throws when a language's script has no font.
 */
export function fontCss(langs: readonly string[]): string {
  const fonts = [...new Set([LATIN, ...langs.map(fontOf)])].sort(byName);
  return [
    ...fonts.flatMap(faces),
    `:root, svg text { ${familyRule([LATIN, ...fonts])} font-synthesis: none; }`,
    ...[...new Set(langs)].sort().map((lang) => langRule(lang, langs)),
  ].join('\n');
}

/**
 * The rule that sets a language in its own script's font first, then in Latin's, then in those of
 * the other languages that are loaded. `--figures` has Latin's first: what is set in it stands on Latin's base line.
 * @throws when a script has no font.
 */
export function langRule(lang: string, loaded: readonly string[]): string {
  const fonts = [fontOf(lang), LATIN, ...loaded.map(fontOf).sort(byName)];
  return `:lang(${lang}) { ${familyRule(fonts)} --figures: ${families([LATIN, ...fonts])}; }`;
}

function familyRule(fonts: readonly ScriptFont[]): string {
  return `font-family: ${families(fonts)};`;
}

function families(fonts: readonly ScriptFont[]): string {
  return [...new Set(fonts.map(({ family }) => `'${family}'`))].join(', ');
}

/** Tells of a code point whether the fonts of `fontCss(langs)` are meant to have it, by the ranges their packages state. */
export function letterCoverage(langs: readonly string[]): (codePoint: number) => boolean {
  const fonts = [...new Set([LATIN, ...langs.map(fontOf)])];
  const ranges = fonts.flatMap((font) => font.subsets.flatMap((subset) => parseRanges(unicodeRanges(font.fontPackage)[subset] ?? '')));
  return (codePoint) => ranges.some(([first, last]) => codePoint >= first && codePoint <= last);
}

/** `U+0000-00FF,U+0131` → pairs of first and last code point. */
function parseRanges(text: string): readonly (readonly [number, number])[] {
  return text.split(',').flatMap((range) => {
    const [, first, last = first] = /^\s*U\+([0-9A-F]+)(?:-([0-9A-F]+))?/i.exec(range) ?? [];
    return first === undefined || last === undefined ? [] : [[parseInt(first, 16), parseInt(last, 16)] as const];
  });
}

/** ISO 15924 script of a language, by the likely subtags of Unicode's CLDR: `ar` → `Arab`. */
export function scriptOf(lang: string): string {
  try {
    return new Intl.Locale(lang).maximize().script ?? 'Zyyy';
  } catch {
    throw new Error(`language “${lang}” is not a BCP 47 tag; right would be for example “en”, “ar” or “pt-BR”`);
  }
}

/** Whether the fonts of `langs`, or Latin's, are those that a language is set in. */
export function hasFontOf(lang: string, langs: readonly string[]): boolean {
  return [LATIN, ...langs.map(fontOf)].includes(fontOf(lang));
}

/** Name of the typeface a language is set in. */
export function fontFamily(lang: string): string {
  return fontOf(lang).family;
}

function fontOf(lang: string): ScriptFont {
  const script = scriptOf(lang);
  const font = LANGUAGE_FONTS[new Intl.Locale(lang).language] ?? SCRIPT_FONTS[script];
  if (font) return font;
  const known = Object.keys(SCRIPT_FONTS).join(', ');
  throw new Error(`language “${lang}” is written in the script ${script}, for which there is no font; there are fonts for ${known}`);
}

const byName = (a: ScriptFont, b: ScriptFont): number => (key(a) < key(b) ? -1 : 1);
const key = (font: ScriptFont): string => `${font.family}/${font.subsets.join()}`;

function faces(font: ScriptFont): readonly string[] {
  const ranges = unicodeRanges(font.fontPackage);
  return font.subsets.flatMap((subset) => WEIGHTS.map((weight) => {
    const woff2 = readFileSync(fontFile(font.fontPackage, `files/${font.fontPackage}-${subset}-${weight}-normal.woff2`));
    return `@font-face { font-family: '${font.family}'; font-weight: ${weight}; font-style: normal; `
      + `src: url(data:font/woff2;base64,${woff2.toString('base64')}) format('woff2'); unicode-range: ${font.ownSpace ? 'U+20,' : ''}${ranges[subset] ?? 'U+0-10FFFF'}; }`;
  }));
}

function unicodeRanges(fontPackage: string): Readonly<Record<string, string>> {
  return JSON.parse(readFileSync(fontFile(fontPackage, 'unicode.json'), 'utf8')) as Record<string, string>;
}

function fontFile(fontPackage: string, file: string): string {
  return createRequire(import.meta.url).resolve(`@fontsource/${fontPackage}/${file}`);
}
