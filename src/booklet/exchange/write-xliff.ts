import type { WordFile } from '../words/index.ts';
import type { Entry } from './entries.ts';
import { lengthLimit } from './limits.ts';
import { notesFor } from './notes.ts';
import { pictureIdsFor, type ReferencePicture } from './picture-references.ts';
import { asWritten, exampleOf, partsOf, placeholderLength } from './placeholders.ts';
import { element, escaped, forbiddenInXml, linesOf, type Written } from './xml-text.ts';

/** Namespaces of XLIFF 2.1 and of its modules for pictures and lengths. `#…` below are the standard's own anchors. */
export const namespaces = {
  core: 'urn:oasis:names:tc:xliff:document:2.0',
  resources: 'urn:oasis:names:tc:xliff:resourcedata:2.0',
  sizes: 'urn:oasis:names:tc:xliff:sizerestriction:2.0',
} as const;

export const xliffVersion = '2.1';

/** What a file of words is made from. */
export interface WordsToWrite {
  readonly sourceLang: string;
  readonly lang: string;
  readonly directions: { readonly source: 'ltr' | 'rtl'; readonly target: 'ltr' | 'rtl' };
  /** BCP 47 tag that fixes the plural forms of the target language. */
  readonly numbers: string;
  readonly entries: readonly Entry[];
  /** State of the texts that are translated. */
  readonly state: 'translated' | 'reviewed';
  readonly pictures: readonly ReferencePicture[];
  /** Folder of the pictures, from the file of words. */
  readonly pictureFolder: string;
}

/** An XLIFF 2.1 document: a `<file>` for each locale file, a `<unit>` for each text, the forms of a plural in a `<group>`. */
export function writeXliff(words: WordsToWrite): string {
  const files = [...new Set(words.entries.map(({ file }) => file))];
  const root = element('xliff', {
    xmlns: namespaces.core, 'xmlns:res': namespaces.resources, 'xmlns:slr': namespaces.sizes,
    version: xliffVersion, srcLang: words.sourceLang, trgLang: words.lang,
  }, files.map((file) => fileElement(words, file)));
  return `<?xml version="1.0" encoding="UTF-8"?>\n${linesOf(root).join('\n')}\n`;
}

const styleNote = 'Instructions to build furniture by hand, largely in pictures. Short sentences, concrete verbs, the words of the trade, one word for one thing. '
  + 'Where the trade has no word in your language, describe the thing.';

function fileElement(words: WordsToWrite, file: WordFile): Written {
  const entries = words.entries.filter((entry) => entry.file === file);
  const limited = entries.some(({ key }) => lengthLimit(key) !== null);
  // #file: elements of the modules, in any order, then notes, then units and groups.
  return element('file', {
    id: file, original: `${file}.json`, canResegment: 'no', srcDir: words.directions.source, trgDir: words.directions.target, 'xml:space': 'preserve',
  }, [
    ...(limited ? [element('slr:profiles', { generalProfile: 'xliff:codepoints' })] : []),
    ...resourceItems(words, entries),
    element('notes', {}, [element('note', { category: 'style' }, escaped(styleNote))]),
    ...unitsOf(words, entries),
  ]);
}

/** The pictures that the file's texts refer to, each once (#resourceData_module). */
function resourceItems({ pictures, pictureFolder }: WordsToWrite, entries: readonly Entry[]): readonly Written[] {
  const wanted = new Set(entries.flatMap(pictureIdsFor));
  const items = pictures.filter(({ id }) => wanted.has(id)).map(({ id }) =>
    element('res:resourceItem', { id, mimeType: 'image/svg+xml', context: 'yes' }, [element('res:source', { href: `${encodeURIComponent(pictureFolder)}/${id}.svg` })]));
  return items.length === 0 ? [] : [element('res:resourceData', {}, items)];
}

function unitsOf(words: WordsToWrite, entries: readonly Entry[]): readonly Written[] {
  return entries.flatMap((entry, index) => {
    if (entry.form === null) return [unitElement(words, entry)];
    if (entries[index - 1]?.base === entry.base) return [];
    const forms = entries.filter(({ base }) => base === entry.base);
    return [element('group', { id: entry.base, type: 'foldwright:plural' }, forms.map((form) => unitElement(words, form)))];
  });
}

function unitElement(words: WordsToWrite, entry: Entry): Written {
  const shown = pictureIdsFor(entry).flatMap((id) => words.pictures.filter((picture) => picture.id === id));
  const notes = notesFor(entry, words.numbers, shown.map(({ id, shows }) => `${words.pictureFolder}/${id}.svg: ${shows}`));
  const limit = lengthLimit(entry.key);
  const state = entry.target === null ? 'initial' : words.state;
  // #unit: elements of the modules, notes, original data, segments.
  return element('unit', { id: entry.key, name: entry.key, 'slr:sizeRestriction': limit === null ? null : String(limit) }, [
    ...(shown.length === 0 ? [] : [element('res:resourceData', {}, shown.map(({ id }) => element('res:resourceItemRef', { ref: id })))]),
    element('notes', {}, notes.map(({ category, text }) => element('note', { category }, escaped(text)))),
    ...(entry.allows.length === 0 ? [] : [originalData(entry)]),
    element('segment', { state }, [
      element('source', {}, content(entry, entry.source)),
      ...(entry.target === null ? [] : [element('target', {}, content(entry, entry.target))]),
    ]),
  ]);
}

/** The placeholders as they stand in the locale files, for the inline codes to refer to. */
const originalData = ({ allows }: Entry): Written =>
  element('originalData', {}, allows.map((name, index) => element('data', { id: `d${index + 1}` }, escapedText(asWritten(name)))));

/** A text with its placeholders as inline codes, the same id for the same one in source and target (#id). */
function content(entry: Entry, text: string): string {
  const times = new Map<string, number>();
  return partsOf(text).map((part) => {
    // A placeholder that the source lacks stays text: the check of the locale files tells it.
    if (!('placeholder' in part)) return escapedText(part.text);
    if (!entry.allows.includes(part.placeholder)) return escapedText(asWritten(part.placeholder));
    const time = (times.get(part.placeholder) ?? 0) + 1;
    times.set(part.placeholder, time);
    return linesOf(code(entry, part.placeholder, time)).join('');
  }).join('');
}

function code({ key, allows, needs }: Entry, name: string, time: number): Written {
  const number = allows.indexOf(name) + 1;
  return element('ph', {
    id: time === 1 ? `p${number}` : `p${number}-${time}`,
    dataRef: `d${number}`,
    equiv: exampleOf(name),
    disp: asWritten(name),
    type: 'ui',
    subType: 'xlf:var',
    canDelete: needs.includes(name) && time === 1 ? 'no' : 'yes',
    'slr:sizeInfo': lengthLimit(key) === null ? null : String(placeholderLength(name)),
  });
}

/** Characters that XML cannot hold become `<cp>` elements (#cp). */
function escapedText(text: string): string {
  const forbidden = [...text.matchAll(forbiddenInXml)].map(([character]) => character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0'));
  return text.split(forbiddenInXml).map((piece, index) => `${index === 0 ? '' : `<cp hex="${forbidden[index - 1] ?? ''}"/>`}${escaped(piece)}`).join('');
}
