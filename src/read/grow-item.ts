import { isMap, isScalar, parseDocument, type Document, type Pair } from 'yaml';

const read = (text: string): Document => parseDocument(text, { version: '1.2', schema: 'core', merge: false, logLevel: 'error' });

/**
 * The text of an item file with one more size, `name`, after the size `from` and as that is written, comments and all.
 * All else stays to the last blank. The name is put in unread: read the new text to know whether it is allowed.
 * Throws a RangeError when the file has no such size, or has one of the new name already.
 */
export function withNewSize(text: string, from: string, name: string): string {
  const sizes = read(text).get('sizes', true);
  const pairs = isMap(sizes) ? sizes.items : [];
  const source = pairs.find((pair) => nameOf(pair) === from);
  if (source === undefined) throw new RangeError(`sizes.${from}: no such size in the file`);
  if (pairs.some((pair) => nameOf(pair) === name)) throw new RangeError(`sizes.${name}: found twice, would be right: a name of its own`);
  const { key, value } = placesOf(source);
  const onOneLine = isMap(sizes) && sizes.flow === true;
  const end = onOneLine ? value : endOfLine(text, value);
  const copied = name + text.slice(key.to, end);
  const lead = onOneLine ? ', ' : `${text.slice(0, end).endsWith('\n') ? '' : lineEnd(text)}${indentAt(text, key.from)}`;
  return text.slice(0, end) + lead + copied + text.slice(end);
}

/** The text of an item file under another name, as a first revision; all else stays. Throws a RangeError when it has no name. */
export function withItemName(text: string, name: string): string {
  const document = read(text);
  const rename = (field: string, to: string, into: string): string => {
    const node = document.get(field, true);
    if (!isScalar(node) || !node.range) throw new RangeError(`${field}: no such value in the file`);
    return into.slice(0, node.range[0]) + to + into.slice(node.range[1]);
  };
  const places = (['name', 'revision'] as const).map((field) => {
    const node = document.get(field, true);
    return { field, at: isScalar(node) && node.range ? node.range[0] : -1 };
  });
  // From the end on, so that the places of what comes before stay right.
  return places.sort((one, other) => other.at - one.at)
    .reduce((changed, { field, at }) => (field === 'revision' && at < 0 ? changed : rename(field, field === 'name' ? name : '1', changed)), text);
}

const nameOf = ({ key }: Pair): string => (isScalar(key) ? String(key.value) : '');

/** Where a size's name stands, and where its last value ends. */
function placesOf({ key, value }: Pair): { readonly key: { readonly from: number; readonly to: number }; readonly value: number } {
  const name = isScalar(key) ? key.range : null;
  const last = isMap(value) ? lastEnd(value.items) ?? value.range?.[1] : undefined;
  if (!name || last === undefined) throw new RangeError('sizes: would be right: a map of names and values');
  return { key: { from: name[0], to: name[1] }, value: isMap(value) && value.flow === true ? value.range?.[1] ?? last : last };
}

const lastEnd = (pairs: readonly Pair[]): number | undefined => {
  const value = pairs.at(-1)?.value;
  return isScalar(value) || isMap(value) ? value.range?.[1] : undefined;
};

/** The end of the line, its line end included. */
function endOfLine(text: string, at: number): number {
  const found = text.indexOf('\n', at);
  return found < 0 ? text.length : found + 1;
}

const lineEnd = (text: string): string => (text.includes('\r\n') ? '\r\n' : '\n');

function indentAt(text: string, at: number): string {
  return text.slice(text.lastIndexOf('\n', at - 1) + 1, at);
}
