import { buildModel } from '../model/index.ts';
import { declaredFor, dimensionedText, type Item, type Parameter, type Quantity } from '../read/index.ts';
import { checkModel } from './check-model.ts';
import type { Report } from './types.ts';

/** A value that, alone changed, mends what was asked for. */
export interface Remedy {
  readonly parameter: string;
  readonly value: Quantity;
}

/** An item, one of its sizes, and the item as it would read with other values of that size, as texts; it throws where these make none. */
export interface Mendable {
  readonly item: Item;
  readonly size: string;
  readonly itemWith: (values: Readonly<Record<string, string>>) => Item;
}

/** Values looked at on each side of the present one unless told, and halvings between the last that does not pass and the first that does. */
const LOOKS = 8;
const HALVINGS = 5;

type Passes = (value: number) => boolean;

/**
 * For each parameter, one after the other, the nearest value in its range that, alone changed, makes a report pass.
 * Yields null for a parameter that has none, so that whoever waits can count. At most `looks` values are tried on each side
 * of the present one, the ends of the range among them, before those between are halved.
 */
export function* remediesFor({ item, size, itemWith }: Mendable, isMended: (report: Report) => boolean, looks = LOOKS): Generator<Remedy | null> {
  for (const parameter of item.parameters) {
    const now = item.sizes.find((each) => each.name === size)?.values[parameter.name];
    if (now === undefined) continue;
    const passes: Passes = (value) => {
      const report = reportWith(size, itemWith, { [parameter.name]: dimensionedText({ ...now, value }) });
      return report !== null && isMended(report);
    };
    const value = nearest(parameter, now.value, passes, looks);
    yield value === null ? null : { parameter: parameter.name, value: { ...now, value } };
  }
}

/** The report with other values, or null where these give no item. */
function reportWith(size: string, itemWith: Mendable['itemWith'], values: Readonly<Record<string, string>>): Report | null {
  try {
    const item = itemWith(values);
    return checkModel(buildModel(item, size), declaredFor(item, size));
  } catch {
    return null; // such values make no item: no remedy
  }
}

function nearest(parameter: Parameter, now: number, passes: Passes, looks: number): number | null {
  const found = [parameter.least.value, parameter.most.value].flatMap((end) => firstTowards(parameter, now, end, passes, looks) ?? []);
  return found.reduce<number | null>((best, each) => (best === null || Math.abs(each - now) < Math.abs(best - now) ? each : best), null);
}

/** The first value that passes on the way to an end of the range. */
function firstTowards({ whole, least }: Parameter, now: number, end: number, passes: Passes, most: number): number | null {
  const looks = whole ? Math.round(Math.abs(end - now)) : most;
  let before = now;
  for (let look = 1; look <= looks; look += 1) {
    const value = now + ((end - now) * look) / looks;
    if (value === now) return null;
    if (passes(value)) return whole ? value : tidied(halved(before, value, passes), value, least.dimension, passes);
    before = value;
  }
  return null;
}

function halved(failing: number, passing: number, passes: Passes): number {
  let [low, high] = [failing, passing];
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (low + high) / 2;
    if (passes(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** A whole millimetre or the like on the far side, where that passes too. */
function tidied(value: number, far: number, dimension: Quantity['dimension'], passes: Passes): number {
  if (dimension === 'angle' || dimension === 'ratio') return value;
  const whole = far > value ? Math.ceil(value) : Math.floor(value);
  return passes(whole) ? whole : value;
}
