import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { importWords } from '../../src/booklet/exchange/index.ts';
import { aboutSchema, readWords } from '../../src/booklet/words/locale-files.ts';
import { readNotes } from '../../src/booklet/workshop/notes.ts';
import { buildSchema } from '../../src/cli/changes/build-record.ts';
import { manifestSchema } from '../../src/cli/shares/manifest.ts';
import { growOrder } from '../../src/page/server/grow.ts';
import { orderSchemas } from '../../src/page/server/orders.ts';
import { measure } from '../../src/read/fields.ts';
import { faultLine, kitFromText } from '../../src/read/index.ts';
import { itemSchema } from '../../src/read/item-schema.ts';
import { kitSchema } from '../../src/read/kit-schema.ts';
import { stockSchema } from '../../src/read/stock-schema.ts';
import { pieceFileSchema } from '../../src/read/structure/schema.ts';
import { expectFaults, itemFile, kitFile, readSample, sample, type Case } from '../read/samples.ts';
import { faultsOf } from '../support/faults.ts';
import { leavesOf, openEnd } from './schema-leaves.ts';

/** Every schema that something from outside is read by. */
const SCHEMAS: Readonly<Record<string, z.ZodType>> = {
  'an item file': itemSchema,
  'a kit file': kitSchema,
  'a stock file': stockSchema,
  'the file of a piece': pieceFileSchema,
  'what a language says of itself': aboutSchema,
  'the list of a share': manifestSchema,
  'the record of a build': buildSchema,
  'values to save': orderSchemas.saveOrder,
  'an order to make': orderSchemas.makeOrder,
  'an order to grow': growOrder,
};

/** Open on purpose: what is never looked into, but compared as a text with another build's. */
const COMPARED_AS_TEXT: Readonly<Record<string, readonly string[]>> = {
  'the record of a build': ['cutPlan.patterns.*: a section of any fields', 'cutPlan.patterns.*.*: anything', 'flatPattern: anything'],
};

const openEnds = (schema: z.ZodType): readonly string[] => leavesOf(schema).flatMap((leaf) => {
  const open = openEnd(leaf);
  return open === null ? [] : [`${leaf.path}: ${open}`];
});

describe('every number, text, list and section', () => {
  it.each(Object.entries(SCHEMAS))('of %s has a bound', (name, schema) => {
    expect(leavesOf(schema).length).toBeGreaterThan(4);
    expect(openEnds(schema)).toEqual(COMPARED_AS_TEXT[name] ?? []);
  });
});

describe('what is beyond a bound', () => {
  const long = 'a'.repeat(61);

  const cases: readonly Case[] = [
    ['spacing: height / (decks - 1)', 'spacing: 1e10', ['24:12', 'expressions.spacing', '"1e10"', 'a number that an item can have']],
    ['spacing: height / (decks - 1)', 'spacing: -.inf', ['24:12', 'expressions.spacing', '"-.inf"', 'an expression of numbers with units']],
    ['spacing: height / (decks - 1)', `spacing: height${' + lift'.repeat(40)}`, ['24:12', 'expressions.spacing', `"height${' + lift'.repeat(7)} + li…"`, 'an expression of at most 200 characters']],
    ['kit: small-kit', `kit: ${long}`, ['3:6', 'kit', `"${long.slice(1)}…"`, 'a text of at most 60 characters']],
    ['expressions:\n', `expressions:\n  ${long}: 3 mm\n`, ['24:3', `expressions.${long}`, `"${long.slice(1)}…"`, 'a text of at most 60 characters']],
  ];

  it.each(cases.map((given) => ({ given })))('is told with its place: $given.0', ({ given }) => {
    expectFaults(itemFile, given);
  });

  it('is told of a kit\'s own limits', () => {
    const text = `${sample(kitFile)}\nlocal-limits:\n  factor-of-safety: { value: 1e9, source: Harbour rule 7 }\n  spread: { value: 11, source: Harbour rule 7 }\n`;
    const line = text.split('\n').findIndex((each) => each.startsWith('  factor-of-safety')) + 1;
    expect(faultsOf(() => kitFromText(text, kitFile)).map(faultLine)).toEqual([
      expect.stringMatching(`^${kitFile}:${line}:\\d+ local-limits.factor-of-safety.value: found "1e9", would be right: a plain number from 1 to 100$`),
      expect.stringMatching(`^${kitFile}:${line + 1}:\\d+ local-limits.spread.value: found "11", would be right: a plain number above 0 and up to 10$`),
    ]);
  });

  it('is told of values beyond number that a piece is given', () => {
    const values = Array.from({ length: 201 }, (_, at) => `a${at}: 1 mm`).join(', ');
    const text = `${sample(itemFile)}\nuses:\n  box: { piece: box, at: [0 mm, 0 mm, 0 mm], with: { ${values} } }\n`;
    expect(faultsOf(() => readSample({ [itemFile]: text })).map(({ field, found, remedy }) => [field, found, remedy])).toContainEqual(['uses.box.with', 'a section', 'at most 200 lines']);
  });
});

describe('a file that no schema reads', () => {
  it('is refused where it is too long: words, notes, words of translators', () => {
    const words = (value: string) => ({ 'en/page.json': JSON.stringify({ busy: value }) });
    expect([...readWords(words('x'.repeat(1000)), 'en', ['page'])]).toHaveLength(1);
    expect(() => readWords(words('x'.repeat(1001)), 'en', ['page'])).toThrow('locales/en/page.json:1:9 page.busy: found a text of 1001 characters; a text of at most 1000 characters');
    expect(() => readWords(words('x'.repeat(100_000)), 'en', ['page'])).toThrow('locales/en/page.json:1:1 found 100011 characters; a file of at most 100000 characters');
    expect(faultsOf(() => readNotes('notes/en.md', 'x'.repeat(100_001), new Set())).map(faultLine)).toEqual(['notes/en.md:1:1: found 100001 characters, would be right: a file of at most 100000 characters']);
    expect(faultsOf(() => importWords(new Uint8Array(5_000_001).fill(32), 'words.xlf', {})).map(faultLine)).toEqual(['words.xlf:1:1: found 5000001 bytes, would be right: a file of at most 5000000 bytes, as exported']);
  });
});

// UAX #9 (from memory): U+202E turns all that follows in its paragraph, until U+202C ends it.
describe('a mark that turns the text that follows', () => {
  it('is refused in a language\'s words, sentences of item files and notes, and is seen where it is told of; what joins letters is not', () => {
    const words = (value: string) => ({ 'en/page.json': JSON.stringify({ busy: value }) });
    expect(() => readWords(words('Drill \u202eØ5'), 'en', ['page'])).toThrow('locales/en/page.json:1:9 page.busy: found \\u202e as character 7; a text without controls and marks that turn the text that follows');
    expect(() => readWords(words('Drill\u0007'), 'en', ['page'])).toThrow('found \\u0007 as character 6');
    expect([...readWords(words('می\u200cشود\nØ5'), 'en', ['page'])]).toHaveLength(1);
    const rule = `${sample(kitFile)}\nlocal-limits:\n  spread: { value: 2, source: "Rule \\u202e7" }\n`;
    expect(faultsOf(() => kitFromText(rule, kitFile)).map(faultLine)).toEqual([expect.stringMatching(/local-limits\.spread\.source: found "Rule \\u202e7", would be right: a text without controls and marks that turn the text that follows$/)]);
    expect(faultsOf(() => readNotes('notes/en.md', 'Slowly.\n\nDrill \u2067Ø5\n', new Set())).map(faultLine)).toEqual(['notes/en.md:3:1: found \\u2067, would be right: a text without controls and marks that turn the text that follows']);
  });
});

describe('the walk', () => {
  it.each<[z.ZodType, string | null]>([
    [z.number(), 'a number without least and most'], [z.number().min(0), 'a number without least and most'], [z.int().min(0), 'a number without least and most'], [z.int().min(0).max(9), null],
    [z.string().regex(/^a*$/), 'a text of any length'], [z.string().max(9), null], [z.array(z.boolean()).min(1), 'a list of any length'], [z.array(z.boolean()).max(9), null],
    [z.record(z.string(), z.boolean()), 'a section of any length'], [z.looseObject({}), 'a section of any fields'], [z.object({}), null], [z.unknown(), 'anything'],
    [z.string().max(9).transform(parseFloat), 'takes 1e300 mm'], [measure('length', 'A length.'), null],
  ])('sees an open end, case %#', (schema, open) => {
    expect(openEnd({ path: '', schema })).toBe(open);
  });

  it('goes into everything that a schema is made of', () => {
    const inner = z.number();
    const schema = z.strictObject({ a: inner.optional(), b: z.array(inner), c: z.tuple([z.boolean(), inner]), d: z.union([z.boolean(), inner]), e: z.record(z.string(), inner.nullable()), f: inner.default(1), g: inner.transform(String) });
    expect(openEnds(schema)).toEqual(expect.arrayContaining(['a', 'b.*', 'c.1', 'd', 'e.*', 'f', 'g'].map((path) => `${path}: a number without least and most`)));
  });
});
