import { asWritten } from './placeholders.ts';
import type { Place, ReadElement } from './read-xml.ts';
import { namespaces, xliffVersion } from './write-xliff.ts';

/** Something wrong in a file of words. */
export interface ExchangeFault {
  readonly place: Place;
  /** Id of the unit, or name of the attribute or element. */
  readonly field: string;
  readonly found: string;
  readonly remedy: string;
}

/** A text and its translation as they came back. */
export interface ReturnedUnit {
  readonly id: string;
  /** Id of the `<file>` it stands in. */
  readonly file: string;
  readonly source: string;
  readonly target: string | null;
  readonly state: string;
  readonly place: Place;
  /** Of the target, or of the unit where there is none. */
  readonly targetPlace: Place;
}

export interface ReturnedWords {
  readonly place: Place;
  /** Null where the file does not say it. */
  readonly sourceLang: string | null;
  readonly lang: string | null;
  readonly files: readonly { readonly id: string; readonly place: Place }[];
  readonly units: readonly ReturnedUnit[];
  readonly faults: readonly ExchangeFault[];
}

/** What the segment of a translated text may say of itself (#state). */
export const states = ['initial', 'translated', 'reviewed', 'final'] as const;

/** Reads what an XLIFF 2.1 document holds, and what in it is against the standard as far as these words need it. */
export function readXliff(root: ReadElement): ReturnedWords {
  const faults: ExchangeFault[] = [];
  const tell: Tell = (place, field, found, remedy) => { faults.push({ place, field, found, remedy }); };
  if (!isCore(root, 'xliff')) {
    tell(root.place, root.name, `the element ${root.name}${root.namespace === '' ? '' : ` of ${root.namespace}`}`, `xliff of ${namespaces.core}`);
    return { place: root.place, sourceLang: null, lang: null, files: [], units: [], faults };
  }
  const { version, srcLang, trgLang } = root.attributes;
  if (version !== xliffVersion) tell(root.place, 'version', quoted(version), `version="${xliffVersion}"`);
  if (srcLang === undefined) tell(root.place, 'srcLang', 'nothing', 'the language of the source texts');
  if (trgLang === undefined) tell(root.place, 'trgLang', 'nothing', 'the language of the translations');
  const files = childrenOf(root, 'file');
  const units = files.flatMap((file) => unitsIn(file, file.attributes['id'] ?? '', trgLang ?? '', tell));
  return { place: root.place, sourceLang: srcLang ?? null, lang: trgLang ?? null, files: files.map(({ attributes, place }) => ({ id: attributes['id'] ?? '', place })), units, faults };
}

export type Tell = (place: Place, field: string, found: string, remedy: string) => void;

export const quoted = (text: string | undefined): string => (text === undefined ? 'nothing' : JSON.stringify(text));

function unitsIn(parent: ReadElement, file: string, lang: string, tell: Tell): readonly ReturnedUnit[] {
  return elementsOf(parent).flatMap((child) => {
    if (isCore(child, 'group')) return unitsIn(child, file, lang, tell);
    return isCore(child, 'unit') ? unitFrom(child, file, lang, tell) : [];
  });
}

function unitFrom(unit: ReadElement, file: string, lang: string, tell: Tell): readonly ReturnedUnit[] {
  const id = unit.attributes['id'];
  if (id === undefined) {
    tell(unit.place, 'unit', 'no id', 'the id with which the text was exported');
    return [];
  }
  const segments = elementsOf(unit).filter((child) => isCore(child, 'segment') || isCore(child, 'ignorable'));
  const [segment] = segments;
  // canResegment="no" stands on every file: a text is one segment and stays so (#canResegment).
  if (segment === undefined || segments.length > 1 || segment.name !== 'segment') {
    tell(unit.place, id, `${segments.length} segments`, 'one segment, as exported');
    return [];
  }
  const [source] = childrenOf(segment, 'source');
  const [target] = childrenOf(segment, 'target');
  if (source === undefined) {
    tell(segment.place, id, 'no source', 'the source text, as exported');
    return [];
  }
  const inline: Inline = { id, tell, originals: originalsOf(unit, source) };
  const language = target?.attributes['http://www.w3.org/XML/1998/namespace lang'];
  if (target !== undefined && language !== undefined && language !== lang) tell(target.place, id, `xml:lang="${language}"`, `xml:lang="${lang}", as trgLang says`);
  return [{
    id, file, place: unit.place, targetPlace: target?.place ?? unit.place,
    source: textOf(source, inline), target: target === undefined ? null : textOf(target, inline),
    state: segment.attributes['state'] ?? 'initial',
  }];
}

interface Inline {
  readonly id: string;
  readonly tell: Tell;
  /** What inline codes stand for, by their `dataRef` and by their own id. */
  readonly originals: { readonly data: ReadonlyMap<string, string>; readonly codes: ReadonlyMap<string, string> };
}

/** What stands for the codes of a unit: its original data, and for codes that lost their reference that of the same code in the source. */
function originalsOf(unit: ReadElement, source: ReadElement): Inline['originals'] {
  const data = new Map(childrenOf(unit, 'originalData').flatMap((each) => childrenOf(each, 'data')).map((each) => [each.attributes['id'] ?? '', plainText(each)]));
  const codes = new Map(childrenOf(source, 'ph').flatMap(({ attributes: { id, dataRef } }): [string, string][] => {
    const original = data.get(dataRef ?? '');
    return id === undefined || original === undefined ? [] : [[id, original]];
  }));
  return { data, codes };
}

/** The text of a source or target with its placeholders as they stand in the locale files. Marks of annotations are let go. */
function textOf(element: ReadElement, inline: Inline): string {
  return element.children.map((child) => {
    if (typeof child === 'string') return child;
    if (isCore(child, 'ph')) return placeholderText(child, inline);
    if (isCore(child, 'cp')) return characterText(child, inline);
    if (isCore(child, 'mrk')) return textOf(child, inline);
    if (isCore(child, 'sm') || isCore(child, 'em')) return '';
    inline.tell(child.place, inline.id, `<${child.name}>`, 'text and the placeholders as exported');
    return '';
  }).join('');
}

function placeholderText({ attributes: { id, dataRef, copyOf, disp }, place }: ReadElement, { id: unit, tell, originals }: Inline): string {
  const original = dataRef === undefined ? originals.codes.get(copyOf ?? id ?? '') : originals.data.get(dataRef);
  if (original === undefined) tell(place, unit, `the placeholder ${disp ?? id ?? ''} without its original data`, 'a placeholder as exported, with its dataRef');
  return original ?? asWritten(disp ?? id ?? '');
}

function characterText(element: ReadElement, { id, tell }: Inline): string {
  const character = characterOf(element);
  if (character === null) tell(element.place, id, `<cp hex="${element.attributes['hex'] ?? ''}">`, 'a code point from 0000 to 10FFFF');
  return character ?? '';
}

function characterOf({ attributes: { hex = '' } }: ReadElement): string | null {
  const code = /^[0-9A-Fa-f]{4,6}$/.test(hex) ? parseInt(hex, 16) : NaN;
  return code <= 0x10ffff ? String.fromCodePoint(code) : null;
}

/** Original data: text, and characters that XML cannot hold. */
const plainText = ({ children }: ReadElement): string => children.map((child) => {
  if (typeof child === 'string') return child;
  return isCore(child, 'cp') ? characterOf(child) ?? '' : '';
}).join('');

const elementsOf = ({ children }: ReadElement): readonly ReadElement[] => children.flatMap((child) => (typeof child === 'string' ? [] : [child]));

const childrenOf = (parent: ReadElement, name: string): readonly ReadElement[] => elementsOf(parent).filter((child) => isCore(child, name));

const isCore = ({ name, namespace }: ReadElement, wanted: string): boolean => namespace === namespaces.core && name === wanted;
