import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kitFromText } from '../../src/read/index.ts';
import type { Fault } from '../../src/read/index.ts';
import { itemFile, kitFile, readSample, sample, standFile } from './samples.ts';
import { faultsOf } from '../support/faults.ts';

/** Bits that files are made of, good and bad, so that random texts reach beyond the first line. */
const bits = fc.constantFrom(
  'kind: item', 'kind: kit', 'name: shelf', 'parameters:', 'sizes:', 'pieces:', 'connections:', 'order:', 'expressions:', 'range: 1 mm to 2 mm', 'is: deck', 'is: post', 'is: frame', 'is: panel', 'on: back', 'level: seat_top', 'sides: [back]',
  'width: ', '800 mm', '2', '-1', '1e400', '\n', '\n  ', '\n    ', '\n  - ', '\r\n', '\r', '\t', ': ', ':', '- ', '? ', '[', ']', '{', '}', '"', "'", '&a ', '*a', '<<: ', '!!set ', '!x ', '%YAML 9\n', '---\n', '...\n',
  '#', '|', '>', ', ', '~', 'null', '.nan', '__proto__', 'constructor', '\u0000', '\u2028', '\uFEFF', '𝔸', '٣',
);

const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.array(bits, { maxLength: 40 }).map((all) => all.join('')),
);

/** A good file with a passage taken out and another put in. */
function damaged(text: string): fc.Arbitrary<string> {
  return fc.tuple(fc.nat(text.length), fc.nat(30), fc.oneof(bits, fc.string({ unit: 'binary', maxLength: 8 })))
    .map(([start, length, put]) => text.slice(0, start) + put + text.slice(start + length));
}

function expectPlacesInside(faults: readonly Fault[], texts: Readonly<Record<string, string>>): void {
  for (const { position: { file, line, column }, found, remedy } of faults) {
    const lines = (texts[file] ?? '').split('\n');
    expect(line).toBeGreaterThanOrEqual(1);
    expect(line).toBeLessThanOrEqual(lines.length);
    expect(column).toBeGreaterThanOrEqual(1);
    expect(column).toBeLessThanOrEqual((lines[line - 1] ?? '').length + 1);
    expect(found).not.toBe('');
    expect(remedy).not.toBe('');
    expect(found).not.toContain('\n');
  }
}

describe('any text at all', () => {
  it('as an item file gives an item or faults inside the text', () => {
    fc.assert(fc.property(fc.oneof(anyText, damaged(sample(itemFile))), (text) => {
      const texts = { [itemFile]: text, [kitFile]: sample(kitFile) };
      expectPlacesInside(faultsOf(() => readSample(texts)), texts);
    }), { numRuns: 250 });
  });

  it('in a file of frames and panels gives an item or faults inside the text', () => {
    fc.assert(fc.property(damaged(sample(standFile)), (text) => {
      const texts = { [standFile]: text, [kitFile]: sample(kitFile) };
      expectPlacesInside(faultsOf(() => readSample(texts, standFile)), texts);
    }), { numRuns: 150 });
  });

  it('as a kit file gives a kit of finite numbers or faults inside the text', () => {
    fc.assert(fc.property(fc.oneof(anyText, damaged(sample(kitFile))), (text) => {
      const faults = faultsOf(() => {
        const { name, catalogue, ...sections } = kitFromText(text, kitFile);
        expect([name, Object.keys(catalogue)]).toEqual(['small-kit', ['joints', 'tubes', 'panels', 'fittings']]);
        for (const value of Object.values(sections).flatMap((section) => Object.values(section))) expect(value === sections.practice.punching || Number.isFinite(value)).toBe(true);
      });
      expectPlacesInside(faults, { [kitFile]: text });
    }), { numRuns: 250 });
  });

  it('is read the same way twice', () => {
    fc.assert(fc.property(damaged(sample(itemFile)), (text) => {
      const once = faultsOf(() => readSample({ [itemFile]: text }));
      expect(faultsOf(() => readSample({ [itemFile]: text }))).toEqual(once);
    }), { numRuns: 50 });
  });
});
