import mathjs from 'mathjs/lib/browser/math.js';
import type { Dimension } from './types.ts';

/** Everything a number with a unit can measure in the files. */
export type Measured = Exclude<Dimension, 'count' | 'ratio'> | 'area' | 'stress' | 'density';

/** What parameters and expressions can measure too; areas, stresses and densities stand in kits alone. */
export const isInExpressions = (measured: Measured): measured is Exclude<Measured, 'area' | 'stress' | 'density'> =>
  measured !== 'area' && measured !== 'stress' && measured !== 'density';

/** Decimal arithmetic, so that a factor such as 25.4 comes out exact. */
const decimal = mathjs.create({ number: 'BigNumber' });

/** The unit every value is turned into, as mathjs writes it. */
const baseUnits: Readonly<Record<Measured, string>> = {
  length: 'mm',
  angle: 'rad',
  force: 'N',
  mass: 'kg',
  area: 'mm^2',
  stress: 'N/mm^2',
  density: 'kg/mm^3',
};

/**
 * Units that may stand in a file, the usual one first, and how mathjs writes them.
 * `psi` is spelt out because the one of mathjs 15.2 is off in the tenth figure.
 */
const fileUnits: Readonly<Record<Measured, Readonly<Record<string, string>>>> = {
  length: { mm: 'mm', cm: 'cm', m: 'm', in: 'in', inch: 'in', ft: 'ft' },
  angle: { deg: 'deg', '°': 'deg', rad: 'rad' },
  force: { N: 'N', kN: 'kN', lbf: 'lbf', kgf: 'kgf' },
  mass: { kg: 'kg', g: 'g', lb: 'lb', oz: 'oz' },
  area: { 'mm^2': 'mm^2', 'cm^2': 'cm^2' },
  stress: { MPa: 'MPa', GPa: 'GPa', kPa: 'kPa', Pa: 'Pa', 'N/mm^2': 'N/mm^2', psi: 'lbf/in^2' },
  density: { 'kg/m^3': 'kg/m^3', 'g/cm^3': 'g/cm^3', 'kg/mm^3': 'kg/mm^3', 'lb/ft^3': 'lb/ft^3' },
};

const allMeasured = Object.keys(fileUnits) as Measured[];

/** Units accepted for one kind of measure, the usual one first. */
export function unitsFor(measured: Measured): readonly string[] {
  return Object.keys(fileUnits[measured]);
}

/** What a unit measures, or null when the files do not use it. Raised figures (`m³`) count as `m^3`. */
export function measuredBy(unit: string): Measured | null {
  return allMeasured.find((measured) => Object.hasOwn(fileUnits[measured], plainUnit(unit))) ?? null;
}

/** How many base units one of each unit is, worked out once by mathjs in decimal figures. */
const factors = new Map(allMeasured.flatMap((measured) => Object.values(fileUnits[measured]).map((spelt) =>
  [spelt, decimal.bignumber(String(decimal.unit(decimal.bignumber(1), spelt).toNumeric(baseUnits[measured])))] as const)));

/** `figure` (a decimal number as text) of `unit` in the base unit of what it measures; the unit must be known. */
export function inBaseUnit(figure: string, unit: string, measured: Measured): number {
  const factor = factors.get(fileUnits[measured][plainUnit(unit)] ?? '');
  if (factor === undefined) throw new RangeError(`no unit of ${measured}: ${unit}`);
  return decimal.bignumber(figure).times(factor).toNumber();
}

/** The unit as the table above spells it. */
function plainUnit(unit: string): string {
  return unit.replace('²', '^2').replace('³', '^3');
}
