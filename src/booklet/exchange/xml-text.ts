/** An element to write: its attributes in order (null ones left out) and what it holds. */
export interface Written {
  readonly name: string;
  readonly attributes: readonly (readonly [string, string | null])[];
  /** Elements on lines of their own, or ready-made text that stays on the element's line. */
  readonly holds: readonly Written[] | string;
}

export const element = (name: string, attributes: Readonly<Record<string, string | null>>, holds: Written['holds'] = []): Written =>
  ({ name, attributes: Object.entries(attributes), holds });

/** An element and all it holds as lines of XML. */
export function linesOf({ name, attributes, holds }: Written, indent = ''): readonly string[] {
  const start = `${indent}<${name}${attributes.map(([key, value]) => (value === null ? '' : ` ${key}="${escaped(value, true)}"`)).join('')}`;
  if (holds.length === 0) return [`${start}/>`];
  if (typeof holds === 'string') return [`${start}>${holds}</${name}>`];
  return [`${start}>`, ...holds.flatMap((each) => linesOf(each, `${indent}  `)), `${indent}</${name}>`];
}

/**
 * Text with the characters of markup written as references (XML 1.0, 2.4), and with those that a reader would
 * change on its way: a carriage return everywhere (2.11), tab and line feed in attributes (3.3.3). What an
 * attribute cannot hold becomes U+FFFD there.
 */
export function escaped(text: string, inAttribute = false): string {
  const kept = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('\r', '&#xD;');
  return inAttribute ? kept.replace(forbiddenInXml, '\ufffd').replaceAll('"', '&quot;').replaceAll('\t', '&#x9;').replaceAll('\n', '&#xA;') : kept;
}

/** A character that XML 1.0 cannot hold even as a reference (2.2): controls, lone surrogates, U+FFFE and U+FFFF. */
export const forbiddenInXml = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;
