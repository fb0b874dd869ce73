import { checkModel, type Finding } from '../../../check/index.ts';
import { buildModel } from '../../../model/index.ts';
import { declaredFor, dimensionedText, type Parameter, type Quantity } from '../../../read/index.ts';
import type { Remedy, Subject } from './messages.ts';
import { itemOf } from './subject.ts';

/** Values looked at on each side of the present one, where they are not whole, and halvings between the last that does not pass and the first that does. */
const LOOKS = 8;
const HALVINGS = 5;

/** Whether a value of a parameter, alone changed, makes all findings of that name pass and lets no other check fail that did not. */
type Passes = (value: number) => boolean;

/**
 * For each parameter, one after the other, the nearest value in its range that makes a check pass while all others stay.
 * Yields null for a parameter that has none, so that whoever waits can count.
 */
export function* remediesOf(subject: Subject, finding: Finding['name']): Generator<Remedy | null> {
  const item = itemOf(subject);
  const fails = failsOf(checkedWith(subject, {}) ?? []);
  for (const parameter of item.parameters) {
    const now = item.sizes.find((each) => each.name === subject.size)?.values[parameter.name];
    if (now === undefined) continue;
    const passes: Passes = (value) => {
      const found = checkedWith(subject, { [parameter.name]: { ...now, value } });
      if (found === null) return false;
      const those = found.filter(({ name }) => name === finding);
      return those.length > 0 && those.every(({ verdict }) => verdict === 'pass') && [...failsOf(found)].every((name) => fails.has(name));
    };
    const value = nearest(parameter, now.value, passes);
    yield value === null ? null : { parameter: parameter.name, value: { ...now, value } };
  }
}

/** The findings with other values, or null where these give no item. */
function checkedWith(subject: Subject, values: Readonly<Record<string, Quantity>>): readonly Finding[] | null {
  try {
    const texts = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, dimensionedText(value)]));
    const item = itemOf({ ...subject, values: { ...subject.values, ...texts } });
    return checkModel(buildModel(item, subject.size), declaredFor(item, subject.size)).findings;
  } catch {
    return null; // such values make no item: no remedy
  }
}

const failsOf = (findings: readonly Finding[]): ReadonlySet<Finding['name']> => new Set(findings.filter(({ verdict }) => verdict === 'fail').map(({ name }) => name));

function nearest(parameter: Parameter, now: number, passes: Passes): number | null {
  const found = [parameter.least.value, parameter.most.value].flatMap((end) => firstTowards(parameter, now, end, passes) ?? []);
  return found.reduce<number | null>((best, each) => (best === null || Math.abs(each - now) < Math.abs(best - now) ? each : best), null);
}

/** The first value that passes on the way to an end of the range. */
function firstTowards({ whole, least }: Parameter, now: number, end: number, passes: Passes): number | null {
  const looks = whole ? Math.round(Math.abs(end - now)) : LOOKS;
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
