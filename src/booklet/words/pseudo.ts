import { readAbout, readWords, sourceLanguage } from './locale-files.ts';
import { wordFiles, type LocaleFiles } from './word-files.ts';

/** The tag of the made-up language that is made from the source language: its own, with a private-use subtag (BCP 47, 2.2.7), so that `Intl` counts alike. */
export const pseudoLanguage = (files: LocaleFiles): string => `${sourceLanguage(files)}-x-long`;

/** How much longer a text becomes, a usual allowance for translations of English (common practice, no source). */
const LONGER = 1.4;

const accents: Readonly<Record<string, string>> = {
  a: 'å', b: 'ƀ', c: 'ç', d: 'đ', e: 'é', f: 'ƒ', g: 'ğ', h: 'ĥ', i: 'î', j: 'ĵ', k: 'ķ', l: 'ļ', m: 'ɱ', n: 'ñ', o: 'ö', p: 'þ', q: 'ʠ', r: 'ŕ', s: 'š', t: 'ţ', u: 'û', v: 'ṽ', w: 'ŵ', x: 'ẋ', y: 'ý', z: 'ž',
  A: 'Å', B: 'Ɓ', C: 'Ç', D: 'Đ', E: 'É', F: 'Ƒ', G: 'Ğ', H: 'Ĥ', I: 'Î', J: 'Ĵ', K: 'Ķ', L: 'Ļ', M: 'Ḿ', N: 'Ñ', O: 'Ö', P: 'Þ', Q: 'Ɋ', R: 'Ŕ', S: 'Š', T: 'Ţ', U: 'Û', V: 'Ṽ', W: 'Ŵ', X: 'Ẋ', Y: 'Ý', Z: 'Ž',
};

/**
 * The locale files with a made-up language beside the others: the source texts in accented letters, 40 % longer and in
 * brackets. What a page shows without them is not from the locale files, or is cut off.
 */
export function withPseudoLanguage(files: LocaleFiles): LocaleFiles {
  const [source, lang] = [sourceLanguage(files), pseudoLanguage(files)];
  const about = { ...readAbout(files, source), name: pseudoText('Long'), source: false, reviewed: null };
  const words = wordFiles.map((name) => {
    const texts = [...readWords(files, source, [name])].map(([key, text]) => [key.slice(name.length + 1), pseudoText(text)] as const);
    return [`${lang}/${name}.json`, JSON.stringify(Object.fromEntries(texts))] as const;
  });
  return { ...files, [`${lang}/about.json`]: JSON.stringify(about), ...Object.fromEntries(words) };
}

/** `Push {{count}} tubes` → `[Þûûšĥ {{count}} ţûûƀééš öñé]`: letters changed, vowels doubled, words added until it is long enough. */
export function pseudoText(text: string): string {
  const pieces = text.split(/(\{\{.+?\}\})/);
  const changed = pieces.map((piece) => (piece.startsWith('{{') ? piece : piece.replace(/[A-Za-z]/g, (letter) => accented(letter)))).join('');
  const wanted = Math.ceil(lettersIn(text) * LONGER);
  return `[${changed}${filling(wanted - lettersIn(changed))}]`;
}

const accented = (letter: string): string => (accents[letter] ?? letter).repeat(/[aeiou]/.test(letter) ? 2 : 1);

const lettersIn = (text: string): number => text.replace(/\{\{.+?\}\}/g, '').length;

/** Words of a space and some letters, together as long as asked. */
function filling(length: number): string {
  const words = ' öñé ţŵö ţĥŕéé ƒöûŕ ƒîṽé šîẋ šéṽéñ';
  return length <= 1 ? '' : words.repeat(Math.ceil(length / words.length)).slice(0, length).trimEnd();
}
