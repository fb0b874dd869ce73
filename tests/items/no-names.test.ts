import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkModel } from '../../src/check/index.ts';
import { planTubes } from '../../src/cut/index.ts';
import type { Model } from '../../src/model/index.ts';
import { declaredFor } from '../../src/read/index.ts';
import { itemNamed, items, modelOf, renamed } from '../support/items.ts';

/** An item may be named after what it is used for; that word is the program's own. */
const uses: readonly string[] = ['storage', 'table', 'seat', 'bed'];
/** Words of the trade and of the page, whatever is called so: what work lies on, and what pages are seen on. */
const ofTheTrade: readonly string[] = ['bench', 'screen'];
const names = items.map((item) => item.name).filter((name) => !ofTheTrade.includes(name));

/**
 * Words of the program spelt like an item that is no use: pictograms of the trade's work that were first drawn for
 * one, and the files they stand in. Every one must still be there.
 */
const drawnFirstFor: readonly (readonly [file: string, ...words: readonly string[]])[] = [
  ['src/draw/pictograms/pairs/index.ts', "'./rack.ts'", 'rackUpright', "'rack-upright'"],
  ['src/draw/pictograms/pairs/rack.ts', 'rackUpright'],
  ['src/work/stand-up/facts.ts', "'rack-upright'"],
];

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((path) => join('src', path)).filter((path) => /\.(tsx?|mjs)$/.test(path)).sort()
  .map((file) => ({ file, text: readFileSync(file, 'utf8') }));

/** The words of a text one by one, `camelCase` and `kebab-case` taken apart, several as one. */
const wordsOf = (text: string): readonly string[] =>
  text.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase().split(/[^a-z]+/).flatMap((word) => [word, word.replace(/s$/, '')]);

const placesOf = (wanted: (line: string) => boolean): readonly string[] =>
  sources.flatMap(({ file, text }) => text.split('\n').flatMap((line, index) => (wanted(line) ? [`${file}:${index + 1}: ${line.trim()}`] : [])));

describe('the program names no item', () => {
  it('and is all looked through', () => {
    expect(sources.length).toBeGreaterThan(250);
    expect(names).toEqual(expect.arrayContaining(['bed', 'chair', 'desk', 'rack', 'stool']));
    expect(wordsOf('const oldRacks = "a-stool"')).toEqual(expect.arrayContaining(['rack', 'stool']));
  });

  it('in code or comment, but for the pictograms that were first drawn for one', () => {
    const other = names.filter((name) => !uses.includes(name));
    const without = (file: string, text: string): string =>
      drawnFirstFor.filter(([where]) => where === file).flatMap(([, ...words]) => words).reduce((left, word) => left.replaceAll(word, ''), text);
    expect(sources.flatMap(({ file, text }) => without(file, text).split('\n').flatMap((line, index) =>
      (wordsOf(line).some((word) => other.includes(word)) ? [`${file}:${index + 1}: ${line.trim()}`] : [])))).toEqual([]);
  });

  it('and has no exception that is out of date', () => {
    for (const [file, ...words] of drawnFirstFor) {
      for (const word of words) expect([file, word, sources.find((each) => each.file === file)?.text.includes(word)]).toEqual([file, word, true]);
    }
  });

  it('and asks no item what it is called before it works', () => {
    expect(placesOf((line) => /(\bitem|\.item|item\.name)\s*[!=]==?\s*['"`]|['"`]\s*[!=]==?\s*(item\b|\w+\.item\b)|switch \((\w+\.)?item(\.name)?\)|\[(\w+\.)item(\.name)?\]/.test(line))).toEqual([]);
  });

  it('and uses the name of a use as the use alone: told apart by use, or the name of a picture, sentence or limit for it', () => {
    const quoted = (line: string): boolean => names.some((name) => new RegExp(`['"\`]${name}['"\`]`).test(line));
    const asUse = /\buse [!=]== '|storage: 'shelf'|'seat', 'backrest'|'seat' \| 'backrest'|^\s*case '|'storage', ?'table', ?'seat', ?'bed'|'storage' \| 'table' \| 'seat' \| 'bed'|\b(climbing|children): 'bed'|\bused\('|backrest: 'seat', table: 'table', shelf/;
    expect(placesOf((line) => quoted(line) && !asUse.test(line))).toEqual([]);
  });

  it('and asks for no parameter by name', () => {
    const asked = placesOf((line) => /parameters(\[['"]|\.(?!(map|filter|flatMap|json)\b)[a-z])/.test(line));
    expect(asked.filter((place) => !place.startsWith('src/read/'))).toEqual([]);
  });
});

describe('an item by another name', () => {
  const nameless = ({ item: _, ...rest }: Model): unknown => rest;

  it.each(names)('is the same to the last hole, cut alike and judged alike: %s', async (name) => {
    const [one, other] = [modelOf(itemNamed(name)), modelOf(renamed(name))];
    expect(other.item).toBe('thing');
    expect(nameless(other)).toEqual(nameless(one));
    expect(await planTubes(other)).toEqual(await planTubes(one));
    expect(checkModel(other, declaredFor(renamed(name), other.size))).toEqual(checkModel(one, declaredFor(itemNamed(name), one.size)));
  });
});
