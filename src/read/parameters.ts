import { dimensionedText } from './dimensioned-text.ts';
import { expressionUnits, functionNames } from './expression-tree.ts';
import { parameterSchema } from './item-schema.ts';
import { limits } from './limits.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import { readMeasure, readQuantity } from './quantities.ts';
import type { Reading } from './quantities.ts';
import type { Fault, Parameter, Quantity } from './types.ts';
import { goodEntries, sectionEntries } from './validate.ts';
import type { YamlSource } from './yaml-source.ts';

/** Names that mean something else in an expression. */
const takenNames: readonly string[] = ['index', 'pi', 'e', 'i', 'to', 'in', 'mod', 'and', 'or', 'xor', 'not', 'true', 'false', 'null', 'undefined', 'end', ...functionNames, ...expressionUnits];

/** Faults of names that expressions could not use. */
export function takenNameFaults(source: YamlSource, sectionName: string, names: readonly string[]): Fault[] {
  return names.filter((name) => takenNames.includes(name)).map((name) => source.faultAtName([sectionName, name], messages.takenName));
}

/** The parameters whose ranges can be read, and the faults of the others. */
export function readParameters(source: YamlSource, raw: unknown): { readonly parameters: readonly Parameter[]; readonly faults: readonly Fault[] } {
  const faults = takenNameFaults(source, 'parameters', sectionEntries(raw).map(([name]) => name));
  const parameters: Parameter[] = [];
  for (const [name, { range, whole, purpose }] of goodEntries(raw, parameterSchema)) {
    const ends = readRange(range, whole);
    if ('remedy' in ends) faults.push(source.fault(['parameters', name, 'range'], ends.remedy));
    else parameters.push({ name, ...ends.value, whole, purpose });
  }
  return { parameters, faults };
}

/** `500 mm to 1100 mm` or `2 to 5`. Ends are in order and of one dimension. */
function readRange(text: string, whole: boolean): Reading<{ readonly least: Quantity; readonly most: Quantity }> {
  if (text.length > limits.rangeLength) return { remedy: messages.range };
  const ends = text.split(/\s+to\s+/);
  const [first, second] = ends.map((end) => readQuantity(end));
  if (ends.length !== 2 || first === undefined || second === undefined) return { remedy: messages.range };
  if ('remedy' in first) return first;
  if ('remedy' in second) return second;
  const [least, most] = [first.value, second.value];
  if (least.dimension !== most.dimension) return { remedy: messages.rangeOneMeasure };
  if (whole && !(isWhole(least) && isWhole(most))) return { remedy: messages.rangeWhole };
  const sign = signRemedy(least) ?? signRemedy(most);
  if (sign !== null) return { remedy: sign };
  if (least.value > most.value) return { remedy: messages.rangeOrder(ends[0]?.trim() ?? '', ends[1]?.trim() ?? '') };
  const counted = (end: Quantity): Quantity => (whole ? { value: end.value, dimension: 'count' } : end);
  return { value: { least: counted(least), most: counted(most) } };
}

function isWhole({ value, dimension }: Quantity): boolean {
  return dimension === 'ratio' && Number.isSafeInteger(value);
}

/** Nothing in an item is negative, and what has a unit is not nought either. */
function signRemedy({ value, dimension }: Quantity): string | null {
  if (dimension === 'ratio' || dimension === 'count') return value < 0 ? messages.notNegative : null;
  return value > 0 ? null : messages.aboveZero(dimension);
}

/** One size's values that can be read and lie in their ranges; faults for the others and for missing and unknown ones. */
export function readSize(
  source: YamlSource, sizeName: string, raw: unknown, parameters: readonly Parameter[], declared: readonly string[],
): { readonly values: Readonly<Record<string, Quantity>>; readonly faults: readonly Fault[] } {
  const path = ['sizes', sizeName];
  const given = new Map(sectionEntries(raw));
  const faults = [...given.keys()].filter((name) => !declared.includes(name))
    .map((name) => source.faultAtName([...path, name], messages.unknownParameter(nearestName(name, declared), declared)));
  const values: Record<string, Quantity> = {};
  for (const parameter of parameters) {
    const value = given.get(parameter.name);
    if (typeof value !== 'string' && typeof value !== 'number') {
      if (value === undefined) faults.push(source.fault([...path, parameter.name], messages.missingParameter(rangeText(parameter))));
      continue;
    }
    const reading = readInRange(value, parameter);
    if ('remedy' in reading) faults.push(source.fault([...path, parameter.name], reading.remedy));
    else values[parameter.name] = reading.value;
  }
  return { values, faults };
}

function readInRange(raw: string | number, parameter: Parameter): Reading<Quantity> {
  const reading = readOneValue(raw, parameter);
  if ('remedy' in reading) return reading;
  const { dimension } = parameter.least;
  const { value } = reading;
  const outside = value < parameter.least.value || value > parameter.most.value;
  if (parameter.whole && (outside || !Number.isSafeInteger(value))) return { remedy: messages.wholeWithin(rangeText(parameter)) };
  return outside ? { remedy: messages.withinRange(rangeText(parameter)) } : { value: { value, dimension } };
}

function readOneValue(raw: string | number, parameter: Parameter): Reading<number> {
  const { dimension } = parameter.least;
  if (dimension !== 'count' && dimension !== 'ratio') return readMeasure(String(raw), dimension);
  const reading = readQuantity(raw);
  if ('remedy' in reading || reading.value.dimension !== 'ratio') return { remedy: messages.plainWithin(rangeText(parameter)) };
  return { value: reading.value.value };
}

function rangeText({ least, most }: Parameter): string {
  return `${dimensionedText(least)} to ${dimensionedText(most)}`;
}
