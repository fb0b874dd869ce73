import { isMap, isPair, isScalar, isSeq, LineCounter, parseDocument, visit, type Node, type Pair, type Scalar } from 'yaml';

/** A file with one fault that was put into it. */
export interface Broken {
  /** What was done, for the name of the case. */
  readonly what: string;
  readonly text: string;
  /** The line that was changed; 0 where the file as a whole is broken. */
  readonly line: number;
}

interface Place {
  readonly text: string;
  readonly lineAt: (offset: number) => number;
}

const measure = /^-?\d+(\.\d+)?\s*(mm|deg|kg|N|MPa|GPa|g|kN|m|cm|N\*m|kg\/m\^3)$/;
const OTHER: Readonly<Record<string, string>> = { mm: 'kg', cm: 'kg', m: 'kg', deg: 'mm', kg: 'mm', g: 'mm', N: 'mm', kN: 'mm', MPa: 'kg', GPa: 'kg' };

/** Kinds of faults in a value, by what the value is: none of them can be right there. */
function valueFaults(text: string): readonly (readonly [what: string, now: string])[] {
  const found = measure.exec(text);
  const figure = parseFloat(text);
  return [
    ['a list', '[1, 2]'], ['a section', '{a: 1}'], ['nothing', '~'], ['a reference to nowhere', '*nowhere'], ['a type of its own', '!!set {a, b}'],
    ...(found === null ? [] : [
      ['no unit', `${figure}`], ['an unknown unit', `${figure} furlong`], ['too much', `1e308 ${found[2] ?? ''}`], ['beyond any number', `1e999 ${found[2] ?? ''}`],
      ['a decimal comma', `1,5 ${found[2] ?? ''}`], ['another measure', `${figure} ${OTHER[found[2] ?? ''] ?? 'kg'}`], ['no number', `.nan ${found[2] ?? ''}`],
    ] as const),
  ];
}

const put = ({ text, lineAt }: Place, from: number, to: number, now: string, what: string): Broken =>
  ({ what, text: text.slice(0, from) + now + text.slice(to), line: lineAt(from) });

function pairFaults(place: Place, { key, value }: Pair<Scalar, Node | null>): readonly Broken[] {
  const [from, to] = value?.range ?? [0, 0];
  const name = String(key.value);
  if (isScalar(value)) return valueFaults(place.text.slice(from, to)).map(([what, now]) => put(place, from, to, now, `${name}: ${what}`));
  return isMap(value) || isSeq(value) ? [put(place, from, to, 'word\n', `${name}: a word`), put(place, from, to, '7\n', `${name}: a number`)] : [];
}

function mapFaults(place: Place, pairs: readonly Pair<Scalar, Node | null>[], isFlow: boolean): readonly Broken[] {
  const [first] = pairs;
  if (first === undefined) return [];
  const at = first.key.range?.[0] ?? 0;
  const column = at - (place.text.lastIndexOf('\n', at - 1) + 1);
  const between = isFlow ? ', ' : `\n${' '.repeat(column)}`;
  const word = place.text.slice(at, first.key.range?.[1]);
  return [
    put(place, at, at, `Quux: 1${between}`, 'a field that nobody knows'),
    put(place, at, at, `"": 1${between}`, 'a field without a name'),
    put(place, at, at, `${word}: 1${between}`, `${word} twice`),
    put(place, at, at, `<<: *base${between}`, 'a merge'),
    ...(isFlow ? [put(place, at, at, '{a: 1}: 1, ', 'a section for a name')] : []),
  ];
}

/** Faults of the file as a whole. */
const wholeFaults = (text: string): readonly Broken[] => [
  ['nothing', ''], ['a comment alone', '# nothing\n'], ['a list', '- a\n- b\n'], ['a word', 'word\n'], ['a number', '7\n'], ['an open bracket', `${text}\nx: [\n`],
  ['an open quote', `${text}\nx: "\n`], ['a tab', `${text}\n\tx: 1\n`], ['two documents', `${text}\n---\n${text}`], ['a byte of nothing', text.replace('\n', '\n\u0000')],
  ['a directive', `%QUUX 1\n---\n${text}`], ['too long', `${text}\n${'# long\n'.repeat(20_000)}`], ['too deep', `${text}\nx: ${'['.repeat(60)}${']'.repeat(60)}\n`],
  ['much out of little', `${text}\na: &a [x, x, x]\nb: &b [*a, *a, *a]\nc: [*b, *b, *b]\n`], ['a key of the language', `${text}\n__proto__: {a: 1}\n`],
].map(([what = '', now = '']) => ({ what: `the file: ${what}`, text: now, line: 0 }));

/** All faults of these kinds that a sound YAML or JSON text can have, in the order of the text. */
export function yamlFaults(text: string): readonly Broken[] {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines });
  const place: Place = { text, lineAt: (offset) => lines.linePos(offset).line };
  const found: Broken[] = [];
  visit(document, {
    Map: (_, map) => { found.push(...mapFaults(place, map.items.filter((pair) => isPair(pair)) as Pair<Scalar, Node | null>[], map.flow === true)); },
    Pair: (_, pair, above) => {
      const faults = pairFaults(place, pair as Pair<Scalar, Node | null>);
      // An expression may be of any measure: what is wrong with it is told where it is used.
      const isExpression = above.some((each) => isPair(each) && isScalar(each.key) && each.key.value === 'expressions');
      found.push(...faults.map((each) => (isExpression && /no unit|another measure/.test(each.what) ? { ...each, line: 0 } : each)));
    },
  });
  return [...wholeFaults(text), ...found];
}
