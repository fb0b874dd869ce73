import { oneOf } from './random.ts';

/** Figures that files should not hold, or not where they stand. */
const FIGURES = ['0', '-1', '1e308', '-1e308', '1e999', '1e-308', '1e15', '123456789', '99999', '0.0001', '.nan', '.inf', '0x1F', '1_000', '2.5', '1e3', '٣', '1/0'];

/** Bits that files are made of, and bits that have no place in them. */
const BITS = [
  '\n', '\n  ', '\n    - ', '\r\n', '\t', ': ', ':', '- ', '? ', '[', ']', '{', '}', '{}', '[]', '"', "'", '&a ', '*a', '<<: ', '!!set ', '%YAML 9\n', '---\n', '#', '|', '>', ', ', '~', 'null', 'true',
  '__proto__', 'constructor', 'toString', '\u0000', '\u2028', '\uFEFF', '\u202E', '𝔸', ' mm', ' kg', ' deg', ' N', 'index', 'decks', 'process.exit(0)', '(f(x) = f(x))', 'import("fs")', 'sqrt(-1)', '1/0', '^99', '<script>', '&amp;', ']]>', '{{count}}', '$t(a)', ';', '=cmd()', '##', '../',
];

type Damage = (random: () => number, text: string) => string;

const at = (random: () => number, length: number): number => Math.floor(random() * (length + 1));

/** Puts something in the place of one of the passages that match. */
function inPlaceOf(pattern: RegExp, put: (random: () => number, was: string) => string): Damage {
  return (random, text) => {
    const found = [...text.matchAll(pattern)];
    if (found.length === 0) return text;
    const { index, 0: was } = oneOf(random, found);
    return text.slice(0, index) + put(random, was) + text.slice(index + was.length);
  };
}

function onLines(change: (random: () => number, lines: string[]) => void): Damage {
  return (random, text) => {
    const lines = text.split('\n');
    change(random, lines);
    return lines.join('\n');
  };
}

const DAMAGES: readonly Damage[] = [
  (random, text) => { const start = at(random, text.length); return text.slice(0, start) + oneOf(random, BITS) + text.slice(start + at(random, 8)); },
  (random, text) => { const start = at(random, text.length); return text.slice(0, start) + text.slice(start + at(random, 40)); },
  inPlaceOf(/-?\d+(\.\d+)?/g, (random) => oneOf(random, FIGURES)),
  inPlaceOf(/-?\d+(\.\d+)?/g, (random, was) => String(Number(was) * oneOf(random, [-1, 0.01, 0.5, 0.9, 1.1, 2, 3, 10, 100, 1e6]))),
  inPlaceOf(/ (mm|kg|deg|N|MPa|GPa)\b/g, (random) => oneOf(random, ['', ' mm', ' kg', ' deg', ' N', ' GPa', ' km', ' in', 'mm'])),
  inPlaceOf(/[a-z_][a-z0-9_-]*/gi, (random, was) => oneOf(random, [was.slice(1), `${was}x`, was.toUpperCase(), '', 'x', ...BITS])),
  inPlaceOf(/(?<=: ).*$/gm, (random) => oneOf(random, [...BITS, ...FIGURES, ''])),
  onLines((random, lines) => { lines.splice(at(random, lines.length - 1), 1 + at(random, 2)); }),
  onLines((random, lines) => { const from = at(random, lines.length - 1); lines.splice(at(random, lines.length - 1), 0, ...lines.slice(from, from + 1 + at(random, 2))); }),
  onLines((random, lines) => { const which = at(random, lines.length - 1); lines[which] = `  ${lines[which] ?? ''}`; }),
  onLines((random, lines) => { const which = at(random, lines.length - 1); lines[which] = (lines[which] ?? '').slice(2); }),
];

/** A text damaged in one to three ways. */
export function damaged(random: () => number, text: string): string {
  let now = text;
  for (let left = 1 + Math.floor(random() * random() * 3); left > 0; left--) now = oneOf(random, DAMAGES)(random, now);
  return now;
}
