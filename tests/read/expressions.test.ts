import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fault, Quantity } from '../../src/read/index.ts';
import { changed, itemFile, readSample } from './samples.ts';
import { faultsOf } from '../support/faults.ts';
import { namesOf } from '../../src/read/index.ts';

/** The value an expression has in the sample's size `high`: width 914.4 mm, height 2000 mm, lean 0.2 rad, decks 5, slack 0. */
function valueOf(text: string): Quantity | undefined {
  return namesOf(readSample({ [itemFile]: withExpression(text) }), 'high').tried;
}

function faultOf(text: string): Fault | undefined {
  return faultsOf(() => readSample({ [itemFile]: withExpression(text) })).find(({ field }) => field === 'expressions.tried');
}

function withExpression(text: string): string {
  return changed(itemFile, 'expressions:\n', `expressions:\n  tried: ${JSON.stringify(text)}\n`);
}

describe('an expression', () => {
  it.each<[string, number, Quantity['dimension']]>([
    ['height', 2000, 'length'],
    ['3', 3, 'count'],
    ['0.5', 0.5, 'ratio'],
    ['3 mm', 3, 'length'],
    ['-3 mm', -3, 'length'],
    ['-(3 mm)', -3, 'length'],
    ['1 m + 1 cm + 1 mm', 1011, 'length'],
    ['1 inch', 25.4, 'length'],
    ['height - 2 * 20 mm', 1960, 'length'],
    ['height / 2', 1000, 'length'],
    ['height / 1 m', 2, 'ratio'],
    ['decks - 1', 4, 'count'],
    ['decks * 2', 10, 'count'],
    ['decks / 2', 2.5, 'ratio'],
    ['floor(decks / 2)', 2, 'count'],
    ['ceil(decks / 2)', 3, 'count'],
    ['round(height / 300 mm)', 7, 'count'],
    ['round(height / 300 mm) * 300 mm', 2100, 'length'],
    ['min(height, 1 m, 900 mm)', 900, 'length'],
    ['max(decks, 7)', 7, 'count'],
    ['abs(1 m - height)', 1000, 'length'],
    ['sqrt((300 mm)^2 + (400 mm)^2)', 500, 'length'],
    ['(2 * 3 mm)^2 / 1 mm', 36, 'length'],
    ['2^3', 8, 'count'],
    ['2^-1', 0.5, 'ratio'],
    ['2 + 3 * 4 ^ 2', 50, 'count'],
    ['-2 ^ 2', -4, 'count'],
    ['2 ^ 3 ^ 2', 512, 'count'],
    ['20 kg / 4 kg', 5, 'ratio'],
    ['sin(30 deg)', 0.5, 'ratio'],
    ['cos(lean - lean)', 1, 'ratio'],
    ['tan(45 deg) * 10 mm', 10, 'length'],
    ['90 deg / 2', Math.PI / 4, 'angle'],
    ['60 kN - 1 N', 59_999, 'force'],
  ])('%s = %d (%s)', (text, value, dimension) => {
    const result = valueOf(text);
    expect(result?.dimension).toBe(dimension);
    expect(result?.value).toBeCloseTo(value, 9);
  });

  it.each([
    ['height + 1', 'here a length meets a count; give the number its unit'],
    ['height - lean', 'here a length meets an angle'],
    ['1 kg + 1 N', 'here a mass meets a force'],
    ['min(height, 5)', 'values of one kind in min'],
    ['floor(height)', 'a number without a unit in floor, not a length; divide first'],
    ['sin(30)', 'an angle in sin, for example sin(45 deg), not a count'],
    ['sin(height)', 'not a length'],
    ['sqrt(height)', 'a plain number or a square'],
    ['2 ^ height', 'an exponent without a unit'],
    ['height ^ 0.5', 'a whole exponent from -4 to 4'],
    ['height ^ decks', 'a whole exponent from -4 to 4'],
    ['height ^ 2', 'not length^2'],
    ['1 / height', 'not length^-1'],
    ['height * 3 kg', 'not length · mass'],
    ['1 / (decks - 5)', 'no division by zero'],
    ['sqrt(decks - 6)', 'no root of less than zero'],
    ['10 ^ 400', 'a result that is a number'],
  ])('%s is refused for what it measures', (text, remedy) => {
    expect(faultOf(text)).toMatchObject({ position: { line: 24, column: 10 } });
    expect(faultOf(text)?.remedy).toContain(remedy);
  });

  it.each([
    ['mm', 'a number before the unit mm, for example 3 mm'],
    ['2 height', 'a sign between the two'],
    ['2 (height)', 'a sign between the two'],
    ['(2) mm', 'a sign between the two'],
    ['1/2 mm', 'a sign between the two'],
    ['3 mm^2', 'a sign between the two'],
    ['3 GPa', 'a sign between the two'],
    ['3 furlong', 'a sign between the two'],
    ['min(1)', 'min with two to ten values'],
    ['min()', 'min with two to ten values'],
    ['sqrt(1, 2)', 'sqrt with one value'],
    ['roud(1.5)', 'a known function: round?'],
    ['heigth', 'a known name in place of heigth: height?'],
    ['index', 'a known name in place of index'],
    ['', 'an expression of numbers with units'],
    ['height +', 'goes on after character'],
  ])('%j is refused with a way out', (text, remedy) => {
    expect(faultOf(text)?.remedy).toContain(remedy);
  });
});

describe('an attack through an expression', () => {
  it.each([
    'import("fs")', 'import({a: 1})', 'createUnit("foo")', 'evaluate("1")', 'parse("1")', 'simplify("1")', 'derivative("x", "x")', 'config({})', 'help(1)',
    'cos.constructor("return process")()', 'height.constructor', 'height["constructor"]', 'constructor', '__proto__', 'prototype', 'toString', 'hasOwnProperty(1)',
    'constructor(1)', '__proto__(1)', 'valueOf()', 'f(x) = x', 'a = 1', 'height = 1 mm', 'a = b = 2', '1; 2', '1\n2', '[1, 2]', '[1, 2][1]', '{a: 1}', '{a: 1}.a',
    '"text"', "'text'", '`text`', '1:2', 'true', 'false', 'null', 'undefined', 'NaN', 'Infinity', 'i', 'pi', 'e', 'end', 'true ? 1 : 2', '5!', '5 % 2', 'height\'',
    '1 == 1', '1 < 2', '1 & 2', '1 | 2', '~1', '1 << 2', 'not 1', '1 and 2', '1 or 2', '5 mod 2', 'height to cm', 'height in cm', '1 xor 2', '1 .* 2', '2 .^ 2', '1 ./ 2',
    '# 1', '1 # comment', '$', '@', '\\u0063onstructor', 'ｈeight', '１', '0x1F', '0b11', '1 + 0o17', '1_000', '--1--', '((((', '))))', ',', '()', 'min(,)', 'min(...)', '.', '1..2',
    '1e999', '1e999 mm', '9'.repeat(400), `${'('.repeat(21)}1${')'.repeat(21)}`, `1${'+1'.repeat(99)}`, '-'.repeat(199) + '1', `1${' '.repeat(200)}`, `2${'^2'.repeat(30)}`,
    'sqrt('.repeat(39) + '1' + ')'.repeat(39), 'random()', 'now()', 'factorial(170)', 'ones(1e9)', 'range(1, 1e9)', 'format(1)', 'print(1)', 'typed(1)', 'reviver(1)', 'unit(1)',
    'globalThis', 'globalThis.process', 'process', 'require("fs")', 'eval("1")', 'Function("return 1")()', 'this', 'new Date()', 'x => x', 'height.__proto__', 'f`1`', 'import.meta',
    'spacing()', 'height(1)', 'min.min(1, 2)', '(min)(1, 2)', 'sin(45 deg)(1)', '+1',
  ])('%j is refused', (text) => {
    const fault = faultOf(text);
    expect(fault?.position).toEqual({ file: itemFile, line: 24, column: 10 });
    expect(fault?.remedy.length).toBeGreaterThan(10);
  });

  it.each(['constructor', '__proto__', 'toString'])('%s is no name at all', (text) => {
    expect(faultOf(text)?.remedy).toMatch(/^numbers, names, /);
  });

  it('is limited in length and depth but not below what is needed', () => {
    expect(valueOf(`1${'+1'.repeat(18)}`)).toEqual({ value: 19, dimension: 'count' });
    expect(valueOf(`${'('.repeat(15)}1${')'.repeat(15)}`)).toEqual({ value: 1, dimension: 'count' });
  });

  const letters = fc.constantFrom('height', 'decks', 'lean', 'mm', 'deg', 'kg', 'in', 'min', 'sin', 'sqrt', 'constructor', '__proto__', '(', ')', ',', '+', '-', '*', '/', '^', ' ', '1', '2.5', '1e3', '.', '=', '[', ']', '"', ';', ':', '{', '}', '!', "'", '\n');

  it('gives a finite quantity or a fault, whatever the text', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ unit: 'grapheme', maxLength: 60 }), fc.array(letters, { maxLength: 14 }).map((all) => all.join(''))), (text) => {
      const faults = faultsOf(() => {
        const value = valueOf(text);
        expect(Number.isFinite(value?.value)).toBe(true);
      });
      for (const { field } of faults) expect(field).toBe('expressions.tried');
    }), { numRuns: 150 });
  });
});
