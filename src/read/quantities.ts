import { ranges } from './limits.ts';
import { messages } from './messages.ts';
import { inBaseUnit, isInExpressions, measuredBy, unitsFor } from './units.ts';
import type { Measured } from './units.ts';
import type { Quantity } from './types.ts';

/** A value, or the remedy for the text it was to be read from. */
export type Reading<T> = { readonly value: T } | { readonly remedy: string };

/** A decimal number as the files write it, without a unit. */
export const figurePattern = '-?\\d+(\\.\\d+)?([eE][+-]?\\d+)?';

const figureAndUnit = new RegExp(`^(${figurePattern})\\s*([^\\d,.\\s].*)?$`);

/** A number with a unit of `measured`, in the base unit, of any sign. */
export function readMeasure(text: string, measured: Measured): Reading<number> {
  const parts = splitText(text);
  if (parts === null || parts.unit === '') return { remedy: /\d,\d/.test(text) ? messages.decimalPoint : messages.withUnit(measured) };
  const found = measuredBy(parts.unit);
  if (found === null) return { remedy: messages.knownUnit(measured, unitsFor(measured)) };
  if (found !== measured) return { remedy: messages.notThisMeasure(measured, found) };
  return inRange(inBaseUnit(parts.figure, parts.unit, measured), measured);
}

/** A number with a unit of length, angle, force or mass, or a plain number (`ratio`), of any sign. */
export function readQuantity(raw: string | number): Reading<Quantity> {
  const parts = splitText(String(raw));
  if (parts === null) return { remedy: /\d,\d/.test(String(raw)) ? messages.decimalPoint : messages.quantity };
  if (parts.unit === '') return asQuantity(inRange(Number(parts.figure), 'ratio'), 'ratio');
  const measured = measuredBy(parts.unit);
  if (measured === null || !isInExpressions(measured)) return { remedy: messages.anyKnownUnit };
  return asQuantity(inRange(inBaseUnit(parts.figure, parts.unit, measured), measured), measured);
}

function splitText(text: string): { readonly figure: string; readonly unit: string } | null {
  const match = figureAndUnit.exec(text.trim());
  return match === null ? null : { figure: match[1] ?? '', unit: (match[4] ?? '').trim() };
}

/** Nothing may be built, counted or set aside by a figure that no item can have. */
function inRange(value: number, measured: Measured | 'ratio'): Reading<number> {
  const [least, most] = ranges[measured];
  const size = Math.abs(value);
  return size === 0 || (size >= least && size <= most) ? { value } : { remedy: messages.inRange(measured) };
}

function asQuantity(reading: Reading<number>, dimension: Quantity['dimension']): Reading<Quantity> {
  return 'remedy' in reading ? reading : { value: { value: reading.value, dimension } };
}
