import { nameOf, type LanguageSet, type Words } from '../booklet/index.ts';

const MOST = 3;

/**
 * The booklets' languages for `--lang`: `fr`, or two or three side by side such as `ar+fr`. Each language by itself
 * unless something is asked for. Single languages come in the order of `all`, then those side by side as asked for.
 * @throws when a language is unknown, stands twice in one booklet, or there are more than three.
 */
export function languageSetsAsked(all: readonly Words[], asked: readonly string[] | undefined): readonly LanguageSet[] {
  const codes = asked ?? all.map(({ lang }) => lang);
  const found = codes.map((code) => languageSetOf(all, code));
  const single = all.filter((words) => found.some((languageSet) => languageSet.length === 1 && languageSet[0] === words)).map((words): LanguageSet => [words]);
  const several = found.filter((languageSet) => languageSet.length > 1);
  return [...single, ...several.filter((languageSet, index) => several.findIndex((other) => nameOf(other) === nameOf(languageSet)) === index)];
}

function languageSetOf(all: readonly Words[], code: string): LanguageSet {
  const langs = code.split('+');
  const known = all.map(({ lang }) => lang).join(', ');
  const words = langs.map((lang) => {
    const found = all.find((each) => each.lang === lang);
    if (!found) throw new Error(`--lang ${code}: ${langs.length === 1 ? '' : lang === '' ? 'an empty place is ' : `${lang} is `}not known; would be right: one of ${known}, or two or three joined by +`);
    return found;
  });
  const twice = langs.find((lang, index) => langs.indexOf(lang) !== index);
  if (twice !== undefined) throw new Error(`--lang ${code}: ${twice} stands twice; would be right: different languages`);
  const [first, ...others] = words;
  if (!first || words.length > MOST) throw new Error(`--lang ${code}: ${words.length} languages in one booklet; would be right: at most ${MOST}`);
  return [first, ...others];
}
