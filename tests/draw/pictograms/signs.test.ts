import { describe, expect, it } from 'vitest';
import { pictogram, safetyColours, signFor, signGrounds, signOfCaution, type SignName } from '../../../src/draw/pictograms/index.ts';
import type { Caution } from '../../../src/plan/index.ts';
import { chromaticity, luminance, luminanceContrast } from './colour.ts';
import type { Point } from './outline.ts';
import { paint, shapesOf } from './painter.ts';

const kinds = {
  warning: ['W022', 'W024'],
  mandatory: ['M002', 'M004', 'M009', 'M016', 'M055', 'M071'],
  prohibition: ['P009', 'P015', 'P018', 'no-drilling-into-lines'],
} as const satisfies Record<string, readonly SignName[]>;

const share = (name: SignName, colour: string): number => {
  const cells = paint(shapesOf(pictogram(name).svg), 48, 48, 0.25).filter((cell) => cell !== null);
  return cells.filter((cell) => cell === colour).length / cells.length;
};

const inside = ([x, y]: Point, corners: readonly Point[]): boolean => {
  const turns = corners.map(([x1, y1], i) => {
    const [x2, y2] = corners[(i + 1) % corners.length] ?? [x1, y1];
    return Math.sign((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1));
  });
  return turns.every((turn) => turn === turns[0]);
};

describe('the colour arithmetic', () => {
  it('gives known values', () => {
    // WCAG: #777777 on white has a contrast ratio of 4.48 : 1, #767676 of 4.54 : 1 (from memory).
    expect(1.05 / (luminance('#777777') + 0.05)).toBeCloseTo(4.48, 2);
    expect(1.05 / (luminance('#767676') + 0.05)).toBeCloseTo(4.54, 2);
    // White point D65: x 0.3127, y 0.3290 (CIE, from memory).
    expect(chromaticity('#fff')[0]).toBeCloseTo(0.3127, 3);
    expect(chromaticity('#fff')[1]).toBeCloseTo(0.329, 3);
  });
});

describe('safety signs', () => {
  it('have a sign for every caution', () => {
    // ISO 7010 meanings (R, CHECKS "Drawings and signs"; P015 and P018 from memory; what it has no sign for goes by its own name).
    const expected: Record<Caution, SignName> = {
      sharp: 'W022', dust: 'M016', eyes: 'M004', gloves: 'M009', crush: 'W024', bit: 'P015', lines: 'no-drilling-into-lines',
      children: 'M055', climbing: 'P009', sitting: 'P018', tipping: 'M071', manual: 'M002',
    };
    expect(signOfCaution).toEqual(expected);
    for (const [caution, name] of Object.entries(expected)) expect(signFor(caution as Caution)).toEqual(pictogram(name));
  });

  it.each(Object.entries(signGrounds))('%s: symbol against ground at least 70 %% luminance contrast', (_kind, { symbol, ground }) => {
    // ISO/IEC Guide 37 (R): luminance contrast >= 70 %. A mono printer keeps luminance and drops hue.
    expect(luminanceContrast(symbol, ground)).toBeGreaterThanOrEqual(0.7);
  });

  it('have edges that stand out from white paper', () => {
    // The shape itself must be seen in grey: band of the triangle, disc, ring, by the same 70 %.
    for (const edge of ['#000', safetyColours.blue, safetyColours.red]) expect(luminanceContrast(edge, '#fff')).toBeGreaterThanOrEqual(0.7);
  });

  it.each([
    // Corner points and luminance factors of ordinary materials in ISO 3864-4. Red: R2, GOST R 12.4.026 table A.1 on
    // a public page; yellow and blue: from memory.
    ['red', 0.07, [[0.735, 0.265], [0.681, 0.239], [0.579, 0.341], [0.655, 0.345]]],
    ['yellow', 0.45, [[0.519, 0.48], [0.468, 0.442], [0.427, 0.483], [0.465, 0.534]]],
    ['blue', 0.05, [[0.078, 0.171], [0.15, 0.22], [0.21, 0.16], [0.137, 0.038]]],
  ] as const)('%s lies in the region of ISO 3864-4', (name, factor, corners) => {
    expect(luminance(safetyColours[name])).toBeGreaterThanOrEqual(factor);
    expect(inside(chromaticity(safetyColours[name]), corners)).toBe(true);
  });

  // Least share of the safety colour: 50 % yellow, 50 % blue, 35 % red (R2, Directive 92/58/EEC as quoted on public pages).
  it.each(kinds.warning)('%s is at least half yellow', (name) => expect(share(name, safetyColours.yellow)).toBeGreaterThanOrEqual(0.5));
  it.each(kinds.mandatory)('%s is at least half blue', (name) => expect(share(name, safetyColours.blue)).toBeGreaterThanOrEqual(0.5));
  it.each(kinds.prohibition)('%s is at least 35 %% red', (name) => expect(share(name, safetyColours.red)).toBeGreaterThanOrEqual(0.35));

  it('use only their own two colours and the edge', () => {
    for (const [names, colours] of [
      [kinds.warning, ['#000', safetyColours.yellow]],
      [kinds.mandatory, ['#fff', safetyColours.blue]],
      [kinds.prohibition, ['#000', '#fff', safetyColours.red]],
    ] as const) {
      for (const name of names) {
        const used = shapesOf(pictogram(name).svg).flatMap(({ fill, stroke }) => [fill, stroke]).filter((colour) => colour !== 'none');
        expect([...new Set(used)].sort(), name).toEqual([...colours].sort());
      }
    }
  });
});
