// Source (R): NBS Circular 572, addendum of 22 January 1960: from 1 July 1959 1 yard = 0.9144 metre exactly, so 1 inch = 25.4 mm;
// the international yard and pound agreement: 1 pound = 0.45359237 kg exactly (R2, conversion table of the Upper Canada District School Board).
// Source (R): definitions file of the pint unit library, hgrecco/pint `pint/default_en.txt`: foot = yard/3, ounce = pound/16,
// force_pound = g_0 · pound, pound_force_per_square_inch = force_pound / inch².
// Standard gravity 9.80665 m/s² exactly (R2 as 1 kgf = 9.80665 N in the same table; 3rd CGPM 1901, M).
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { kitFromText } from '../../src/read/index.ts';
import { inBaseUnit, unitsFor, type Measured } from '../../src/read/units.ts';
import { changed, kitFile } from '../read/samples.ts';

/** One unit of each kind, read from a kit file in a field that takes it. */
const read = {
  length: (text: string) => kitFromText(changed(kitFile, 'length: 3000 mm', `length: ${text}`), kitFile).cable.length,
  angle: (text: string) => kitFromText(changed(kitFile, 'tightest-crease: 45 deg', `tightest-crease: ${text}`), kitFile).panel.tightestCrease,
  force: (text: string) => kitFromText(changed(kitFile, 'strength: 2000 N', `strength: ${text}`), kitFile).cable.strength,
  mass: (text: string) => kitFromText(changed(kitFile, 'mass: 0.18 kg', `mass: ${text}`), kitFile).joint.mass,
  stress: (text: string) => kitFromText(changed(kitFile, 'modulus: 17 GPa', `modulus: ${text}`), kitFile).tube.modulus,
  density: (text: string) => kitFromText(changed(kitFile, 'density: 160 kg/m^3', `density: ${text}`), kitFile).panel.density,
};

describe('units in files', () => {
  it.each<[keyof typeof read, string, number, string]>([
    ['length', '1 in', 25.4, 'R'],
    ['length', '1 inch', 25.4, 'R'],
    ['length', '36 in', 914.4, 'R'],
    ['length', '1 ft', 304.8, 'R'],
    ['length', '0.1 mm', 0.1, 'C'],
    ['length', '2.54 cm', 25.4, 'C'],
    ['length', '1.2 m', 1200, 'C'],
    ['mass', '1 lb', 0.45359237, 'R2'],
    ['mass', '16 oz', 0.45359237, 'R'],
    ['mass', '1 oz', 0.028349523125, 'C'],
    ['mass', '180 g', 0.18, 'C'],
    ['force', '1 lbf', 4.4482216152605, 'C: 0.45359237 × 9.80665'],
    ['force', '1 kgf', 9.80665, 'R2'],
    ['force', '60 kN', 60_000, 'C'],
    ['stress', '1 psi', 0.006894757293168362, 'C: 4.4482216152605 / 645.16 in fractions'],
    ['stress', '17 GPa', 17_000, 'C'],
    ['stress', '1200 MPa', 1200, 'C'],
    ['stress', '350 kPa', 0.35, 'C'],
    ['stress', '250 Pa', 0.00025, 'C'],
    ['stress', '1 N/mm²', 1, 'C'],
    ['density', '160 kg/m^3', 1.6e-7, 'C'],
    ['density', '1 lb/ft^3', 1.601846337396014e-8, 'C: 0.45359237 / 304.8³ in fractions'],
    ['density', '1 g/cm^3', 1e-6, 'C'],
    ['angle', '180 deg', Math.PI, 'C'],
    ['angle', '90°', Math.PI / 2, 'C'],
    ['angle', '1 rad', 1, 'C'],
  ])('%s: %s is exactly %d (%s)', (kind, text, value) => {
    expect(read[kind](text)).toBe(value);
  });
});

/** Reference: the unit tables of the library mathjs, in decimals; `psi` spelt out, its own is off in the tenth figure (mathjs 15.2). */
describe('units beside those of mathjs', () => {
  const decimal = create(all ?? {}, { number: 'BigNumber' });
  const bases: Readonly<Record<Measured, string>> = { length: 'mm', angle: 'rad', force: 'N', mass: 'kg', area: 'mm^2', stress: 'N/mm^2', density: 'kg/mm^3' };
  const spelt = (unit: string): string => ({ '°': 'deg', psi: 'lbf/in^2' })[unit] ?? unit;
  const known = (Object.keys(bases) as Measured[]).flatMap((measured) => unitsFor(measured).map((unit) => [measured, unit] as const));

  it.each(known)('%s in %s', (measured, unit) => {
    const figure = decimal.unit(decimal.bignumber('7.3'), spelt(unit)).toNumeric(bases[measured]);
    expect(inBaseUnit('7.3', unit, measured)).toBe(Number(String(figure)));
  });
});
