import { isCollection, isNode, LineCounter, parseDocument, visit, type Node } from 'yaml';
import { z } from 'zod';
import { firstUnseen, withoutUnseen } from '../../read/index.ts';
import { isDay, isName } from './signature.ts';
import { wordFiles, type LocaleFiles, type WordFile } from './word-files.ts';
import { noSource, wordsError } from './words-error.ts';

/** The most this room accepts. Ours: far above what any language needs, low enough that a hostile file cannot stall the reader. */
export const WORDS_LIMITS = {
  /** Characters of one file. */
  file: 100_000,
  /** Characters of one text. */
  text: 1000,
} as const;

export const aboutSchema = z.strictObject({
  /** The language's own name. */
  name: z.string().max(100).refine(isName, 'a name'),
  direction: z.enum(['ltr', 'rtl']),
  /** BCP 47 tag for `Intl`; it fixes digits, decimal mark and lists. */
  numbers: z.string().max(60).refine(isLocaleTag, 'a BCP 47 tag that Intl knows, such as "ar" or "ar-EG"'),
  /** Size of running text against Latin, for scripts whose letters are small at the same point size. */
  textScale: z.number().min(1).max(1.5),
  /** True for the one language in which the texts are written first. */
  source: z.boolean(),
  /** Who read the translation over, when, and the mark of the texts as they were then (`textsMark`). Null for a draft. */
  reviewed: z.strictObject({
    by: z.string().max(100).refine(isName, 'a name'),
    on: z.string().max(10).refine(isDay, 'a day such as "2026-03-14"'),
    of: z.string().max(16).regex(/^[0-9a-f]{16}$/, 'sixteen hexadecimal digits'),
  }).nullable(),
});

export type About = Readonly<z.infer<typeof aboutSchema>>;

/** Words as they stand in the files: `actions.crease_one` and so on, in the order of the files. */
export type FlatWords = ReadonlyMap<string, string>;

/** Languages that have an `about.json`, in alphabetical order. */
export function languagesIn(files: LocaleFiles): readonly string[] {
  return Object.keys(files)
    .flatMap((path) => /^([^/]+)\/about\.json$/.exec(path)?.[1] ?? [])
    .sort();
}

/** The language in which the texts are written first. Throws where none says so. */
export function sourceLanguage(files: LocaleFiles): string {
  const source = languagesIn(files).find((lang) => readAbout(files, lang).source);
  if (source === undefined) throw wordsError(noSource);
  return source;
}

/** What a language says about itself. Throws where the file is missing or a field is wrong. */
export function readAbout(files: LocaleFiles, lang: string): About {
  const path = `${lang}/about.json`;
  const { value, placeOf } = parse(files, path);
  if (typeof value === 'object' && value !== null && 'reviewer' in value) {
    throw wordsError({ path, ...placeOf(['reviewer']), field: 'reviewer', found: 'a field of old', remedy: 'write "reviewed": null in its place; foldwright words import --reviewed-by enters a review' });
  }
  const result = aboutSchema.safeParse(value);
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  throw wordsError({ path, ...placeOf(issue?.path ?? []), field: issue?.path.join('.') ?? '', found: 'a value that does not fit', remedy: issue?.message ?? '' });
}

/** All words of a language, or those of some of its files, flat. Throws where a file is missing, is not JSON or holds anything but texts. */
export function readWords(files: LocaleFiles, lang: string, names: readonly WordFile[] = wordFiles): FlatWords {
  return new Map(names.flatMap((name) => {
    const path = `${lang}/${name}.json`;
    const { value, placeOf } = parse(files, path);
    return flatten(value, [], { name, path, placeOf });
  }));
}

interface Parsed {
  readonly value: unknown;
  /** Where a field's value stands, or the nearest there is above it. */
  readonly placeOf: (field: readonly PropertyKey[]) => { readonly line: number; readonly column: number };
}

function parse(files: LocaleFiles, path: string): Parsed {
  const text = files[path];
  if (text === undefined) throw wordsError({ path, field: '', found: 'no such file', remedy: 'add it to the language\'s folder' });
  if (text.length > WORDS_LIMITS.file) throw wordsError({ path, field: '', found: `${text.length} characters`, remedy: `a file of at most ${WORDS_LIMITS.file} characters` });
  const printed = asPrinted(text);
  return printed === null ? parseWithPlaces(text, path) : { ...printed, placeOf: (field) => parseWithPlaces(text, path).placeOf(field) };
}

/** The value of a text that is JSON to the letter as it is printed, as these files are: then no name stands in it twice, and nothing is in it but JSON. Null for another, which is read with care. */
function asPrinted(text: string): Pick<Parsed, 'value'> | null {
  try {
    const value = JSON.parse(text) as unknown;
    return `${JSON.stringify(value, null, 2)}\n` === text ? { value } : null;
  } catch {
    return null;
  }
}

function parseWithPlaces(text: string, path: string): Parsed {
  const lines = new LineCounter();
  // JSON is read as YAML, of which it is a part, because that reader tells line and column.
  const document = parseDocument(text, { lineCounter: lines, uniqueKeys: true });
  const [fault] = [...document.errors, ...document.warnings];
  if (fault) {
    const { line, col } = lines.linePos(fault.pos[0]);
    throw wordsError({ path, line, column: col, field: '', found: 'a fault in the JSON text', remedy: fault.message.split('\n')[0] ?? '' });
  }
  const placeOf: Parsed['placeOf'] = (field) => {
    const node = document.getIn(field, true);
    if (!isNode(node) && field.length > 0) return placeOf(field.slice(0, -1));
    const { line, col } = lines.linePos(isNode(node) ? node.range?.[0] ?? 0 : 0);
    return { line, column: col };
  };
  const refuse = ({ range }: Node, found: string): never => {
    const { line, col } = lines.linePos(range?.[0] ?? 0);
    throw wordsError({ path, line, column: col, field: '', found, remedy: 'a text in quotes' });
  };
  // JSON has no references to what stands elsewhere, which could also make much out of little, and no types by name.
  visit(document, {
    Alias: (_, node) => refuse(node, 'a reference to another value'),
    Node: (_, node) => { if (node.tag !== undefined) refuse(node, `the type ${node.tag}`); },
    Pair: (_, { key }) => { if (isCollection(key)) refuse(key, 'a section in the place of a name'); },
    Scalar: (_, node) => { if (typeof node.value === 'string' && node.type !== 'QUOTE_DOUBLE') refuse(node, 'words without double quotes'); },
  });
  return { value: document.toJS() as unknown, placeOf };
}

/** One word file: the first part of its keys, its path, and where its fields stand. */
interface Place extends Pick<Parsed, 'placeOf'> {
  readonly name: string;
  readonly path: string;
}

function flatten(value: unknown, field: readonly string[], place: Place): [string, string][] {
  const key = [place.name, ...field].join('.');
  if (typeof value === 'string' && value.length > WORDS_LIMITS.text) throw wordsError({ path: place.path, ...place.placeOf(field), field: key, found: `a text of ${value.length} characters`, remedy: `a text of at most ${WORDS_LIMITS.text} characters` });
  const unseen = typeof value === 'string' ? firstUnseen(value) : null;
  if (unseen !== null) throw wordsError({ path: place.path, ...place.placeOf(field), field: key, found: `${unseen.sign} as character ${unseen.at + 1}`, remedy: withoutUnseen });
  if (typeof value === 'string' && value.trim() !== '') return [[key, value]];
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    return Object.entries(value).flatMap(([name, inner]) => flatten(inner, [...field, name], place));
  }
  throw wordsError({ path: place.path, ...place.placeOf(field), field: key, found: JSON.stringify(value) ?? 'nothing', remedy: 'a text in quotes' });
}

/** Browsers have rules for fewer languages than Node: there every well-formed tag will do, as the command has checked it. */
const knowsAll = Intl.NumberFormat.supportedLocalesOf(['ckb', 'so', 'ti']).length === 3;

/** Whether `Intl` knows the language of a BCP 47 tag. */
export function isLocaleTag(tag: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag).length === 1 || !knowsAll;
  } catch {
    return false;
  }
}
