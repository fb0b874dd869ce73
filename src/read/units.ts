import { Decimal } from 'decimal.js';
import type { Dimension } from './types.ts';

/** Everything a number with a unit can measure in the files. */
export type Measured = Exclude<Dimension, 'count' | 'ratio'> | 'area' | 'stress' | 'density';

/** What parameters and expressions can measure too; areas, stresses and densities stand in kits alone. */
export const isInExpressions = (measured: Measured): measured is Exclude<Measured, 'area' | 'stress' | 'density'> =>
  measured !== 'area' && measured !== 'stress' && measured !== 'density';

/** Decimal arithmetic, so that a factor such as 25.4 comes out exact. */
const Exact = Decimal.clone({ precision: 64, defaults: true });

/** How many mm, rad, N, kg, mm², N/mm² or kg/mm³ one of a unit is: a decimal figure, or the ratio of two. */
type Factor = string | readonly [string, string];

/** mm of an inch and of a foot, kg of a pound (international yard and pound agreement of 1959), m/s² of standard gravity (CGPM 1901): exact by definition. */
const [INCH, FOOT, POUND, GRAVITY] = ['25.4', '304.8', '0.45359237', '9.80665'] as const;
const POUND_FORCE = new Exact(POUND).times(GRAVITY).toString();
const cubed = (length: string): string => new Exact(length).pow(3).toString();

/** Units that may stand in a file, the usual one first, each by how many base units it is. */
const fileUnits: Readonly<Record<Measured, Readonly<Record<string, Factor>>>> = {
  length: { mm: '1', cm: '10', m: '1000', in: INCH, inch: INCH, ft: FOOT },
  angle: { deg: [Exact.acos(-1).toString(), '180'], '°': [Exact.acos(-1).toString(), '180'], rad: '1' },
  force: { N: '1', kN: '1000', lbf: POUND_FORCE, kgf: GRAVITY },
  mass: { kg: '1', g: '0.001', lb: POUND, oz: [POUND, '16'] },
  area: { 'mm^2': '1', 'cm^2': '100' },
  stress: { MPa: '1', GPa: '1000', kPa: '0.001', Pa: '1e-6', 'N/mm^2': '1', psi: [POUND_FORCE, new Exact(INCH).pow(2).toString()] },
  density: { 'kg/m^3': '1e-9', 'g/cm^3': '1e-6', 'kg/mm^3': '1', 'lb/ft^3': [POUND, cubed(FOOT)] },
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

/** `figure` (a decimal number as text) of `unit` in the base unit of what it measures; the unit must be known. */
export function inBaseUnit(figure: string, unit: string, measured: Measured): number {
  const factor = fileUnits[measured][plainUnit(unit)];
  if (factor === undefined) throw new RangeError(`no unit of ${measured}: ${unit}`);
  return new Exact(figure).times(typeof factor === 'string' ? factor : new Exact(factor[0]).div(factor[1])).toNumber();
}

/** The unit as the table above spells it. */
function plainUnit(unit: string): string {
  return unit.replace('²', '^2').replace('³', '^3');
}
