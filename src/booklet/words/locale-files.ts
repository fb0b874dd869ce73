import { LineCounter, parseDocument } from 'yaml';
import { z } from 'zod';
import { wordsError } from './words-error.ts';

/** The text of every locale file by its path under `locales/`, for example `fr/actions.json`. */
export type LocaleFiles = Readonly<Record<string, string>>;

/** The files of words that each language's folder holds beside `about.json`; keys start with these names. */
export const wordFiles = ['booklet', 'actions', 'parts', 'cautions', 'checks', 'dimensions', 'findings', 'items', 'pack'] as const;

const about = z.strictObject({
  /** The language's own name. */
  name: z.string().min(1),
  direction: z.enum(['ltr', 'rtl']),
  /** BCP 47 tag for `Intl`; it fixes digits, decimal mark and lists. */
  numbers: z.string().refine(isLocaleTag, 'a BCP 47 tag that Intl knows, such as "ar" or "ar-EG"'),
  /** Size of running text against Latin, for scripts whose letters are small at the same point size. */
  textScale: z.number().min(1).max(1.5),
  /** True for the one language in which the texts are written first. */
  source: z.boolean(),
  /** Who read the translation over, or null: then the booklet says that it is a draft. */
  reviewer: z.string().min(1).nullable(),
});

export type About = Readonly<z.infer<typeof about>>;

/** Words as they stand in the files: `actions.crease_one` and so on, in the order of the files. */
export type FlatWords = ReadonlyMap<string, string>;

/** Languages that have an `about.json`, in alphabetical order. */
export function languagesIn(files: LocaleFiles): readonly string[] {
  return Object.keys(files)
    .flatMap((path) => /^([^/]+)\/about\.json$/.exec(path)?.[1] ?? [])
    .sort();
}

/** What a language says about itself. Throws where the file is missing or a field is wrong. */
export function readAbout(files: LocaleFiles, lang: string): About {
  const path = `${lang}/about.json`;
  const result = about.safeParse(parse(files, path));
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  throw wordsError({ path, field: issue?.path.join('.') ?? '', found: 'a value that does not fit', remedy: issue?.message ?? '' });
}

/** All words of a language, flat. Throws where a file is missing, is not JSON or holds anything but texts. */
export function readWords(files: LocaleFiles, lang: string): FlatWords {
  return new Map(wordFiles.flatMap((name) => {
    const path = `${lang}/${name}.json`;
    return flatten(parse(files, path), name, path);
  }));
}

function parse(files: LocaleFiles, path: string): unknown {
  const text = files[path];
  if (text === undefined) throw wordsError({ path, field: '', found: 'no such file', remedy: 'add it to the language\'s folder' });
  const lines = new LineCounter();
  // JSON is read as YAML, of which it is a part, because that reader tells line and column.
  const document = parseDocument(text, { lineCounter: lines, uniqueKeys: true });
  const [fault] = document.errors;
  if (fault) {
    const { line, col } = lines.linePos(fault.pos[0]);
    throw wordsError({ path, line, column: col, field: '', found: 'a fault in the JSON text', remedy: fault.message.split('\n')[0] ?? '' });
  }
  return document.toJS() as unknown;
}

function flatten(value: unknown, key: string, path: string): [string, string][] {
  if (typeof value === 'string' && value.trim() !== '') return [[key, value]];
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    return Object.entries(value).flatMap(([name, inner]) => flatten(inner, `${key}.${name}`, path));
  }
  throw wordsError({ path, field: key, found: JSON.stringify(value) ?? 'nothing', remedy: 'a text in quotes' });
}

function isLocaleTag(tag: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag).length === 1;
  } catch {
    return false;
  }
}
