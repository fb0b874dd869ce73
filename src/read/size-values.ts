import { isScalar, parseDocument } from 'yaml';

/** A decimal figure and perhaps a unit in letters: nothing that could be read as more than one value. */
const plainValue = /^-?\d+(\.\d+)?([eE][+-]?\d+)? ?[A-Za-z°]*$/;

interface Change {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/**
 * The text of an item file with other values in one size, such as `width: 900 mm`. All else stays as it is written,
 * to the last blank and comment. The values are put in unread: read the new text to know whether they are allowed.
 * Throws a RangeError when the file has no such size or value, or a value is more than a figure with a unit.
 */
export function withSizeValues(text: string, size: string, values: Readonly<Record<string, string>>): string {
  const document = parseDocument(text, { version: '1.2', schema: 'core', merge: false, logLevel: 'error' });
  const changes = Object.entries(values).map(([name, value]): Change => {
    if (!plainValue.test(value)) throw new RangeError(`sizes.${size}.${name}: found ${JSON.stringify(value)}, would be right: a figure with its unit, such as "900 mm"`);
    const node = document.getIn(['sizes', size, name], true);
    const range = isScalar(node) ? node.range : null;
    if (!range) throw new RangeError(`sizes.${size}.${name}: no such value in the file`);
    return { from: range[0], to: range[1], text: value };
  });
  return changes.sort((a, b) => b.from - a.from)
    .reduce((changed, { from, to, text: value }) => changed.slice(0, from) + value + changed.slice(to), text);
}
