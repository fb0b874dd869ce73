import { nameOf, type Tongues, type Words } from '../booklet/index.ts';

const MOST = 3;

/**
 * The booklets' languages for `--lang`: `fr`, or two or three side by side such as `ar+fr`. Each language by itself
 * unless something is asked for. Single languages come in the order of `all`, then those side by side as asked for.
 * @throws when a language is unknown, stands twice in one booklet, or there are more than three.
 */
export function tonguesAsked(all: readonly Words[], asked: readonly string[] | undefined): readonly Tongues[] {
  const codes = asked ?? all.map(({ lang }) => lang);
  const found = codes.map((code) => tonguesOf(all, code));
  const single = all.filter((words) => found.some((tongues) => tongues.length === 1 && tongues[0] === words)).map((words): Tongues => [words]);
  const several = found.filter((tongues) => tongues.length > 1);
  return [...single, ...several.filter((tongues, index) => several.findIndex((other) => nameOf(other) === nameOf(tongues)) === index)];
}

function tonguesOf(all: readonly Words[], code: string): Tongues {
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
