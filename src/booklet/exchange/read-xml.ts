import { SaxesParser, type SaxesTagNS } from 'saxes';

/** A place in a file, both from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** An element as it was read. */
export interface ReadElement {
  /** Local name, such as `unit`. */
  readonly name: string;
  readonly namespace: string;
  /** Values by local name; those of other namespaces by `namespace name`. */
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (ReadElement | string)[];
  /** Where its start tag begins. */
  readonly place: Place;
}

/** A text that is no XML document. */
export class XmlFault extends Error {
  readonly place: Place;

  constructor(place: Place, found: string) {
    super(found);
    this.place = place;
  }
}

/** XLIFF needs ten levels or so; what is read goes down level by level. */
const deepest = 100;

interface Open {
  readonly element: ReadElement;
  readonly children: (ReadElement | string)[];
}

/** The root element of an XML document with namespaces. Throws `XmlFault` at the first thing that is not well-formed, and at a document type. */
export function readXml(text: string): ReadElement {
  const parser = new SaxesParser({ xmlns: true });
  const placeAt = placesIn(text);
  const roots: ReadElement[] = [];
  const open: Open[] = [];
  const add = (child: ReadElement | string): void => { open.at(-1)?.children.push(child); };
  let start = 0;
  // The parser has read one character beyond the one it stumbles over, and a reference to its end, wherever that may be.
  const before = (piece: string): Place => placeAt(text.lastIndexOf(piece, parser.position - 1));
  parser.on('error', (error) => { throw new XmlFault(error.message.includes('entity') ? before('&') : placeAt(parser.position - 1), error.message.replace(/^[\d:]+ /, '').replace(/\.$/, '')); });
  // An own document type could rename or swell what stands in the file; XLIFF has none.
  parser.on('doctype', () => { throw new XmlFault(before('<!DOCTYPE'), 'a document type'); });
  parser.on('opentagstart', () => { start = text.lastIndexOf('<', parser.position - 1); });
  parser.on('opentag', (tag) => {
    if (open.length === deepest) throw new XmlFault(placeAt(start), `elements more than ${deepest} deep`);
    const children: (ReadElement | string)[] = [];
    const element = { name: tag.local, namespace: tag.uri, attributes: attributesOf(tag), children, place: placeAt(start) };
    if (open.length === 0) roots.push(element);
    add(element);
    open.push({ element, children });
  });
  parser.on('closetag', () => { open.pop(); });
  parser.on('text', add);
  parser.on('cdata', add);
  parser.write(text).close();
  const [root] = roots;
  if (root === undefined) throw new XmlFault({ line: 1, column: 1 }, 'no element');
  return root;
}

const attributesOf = ({ attributes }: SaxesTagNS): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.values(attributes).map(({ uri, local, value }) => [uri === '' ? local : `${uri} ${local}`, value]));

/** Line and column of an index in a text; a line ends with LF, CR or both. */
function placesIn(text: string): (index: number) => Place {
  const starts = [0, ...[...text.matchAll(/\r\n|\r|\n/g)].map((match) => match.index + match[0].length)];
  return (index) => {
    const at = Math.max(0, index);
    const after = starts.findIndex((start) => start > at);
    const line = after === -1 ? starts.length : after;
    return { line, column: at - (starts[line - 1] ?? 0) + 1 };
  };
}

/**
 * The text of a file in UTF-8, or in UTF-16 where it begins with that mark, without the mark.
 * Throws `XmlFault` where the bytes are no such text.
 */
export function xmlText(bytes: Uint8Array): string {
  const encoding = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8';
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    throw new XmlFault({ line: 1, column: 1 }, 'bytes that are no text in UTF-8');
  }
}
