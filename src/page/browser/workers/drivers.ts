import { dimensionedText, type Item, type Quantity } from '../../../read/index.ts';
import { buildModel } from '../../../model/index.ts';
import type { Driver, Subject } from './messages.ts';
import { itemOf } from './subject.ts';

/** How far a measure is moved to see what it moves, mm. */
const NUDGE = 1;

/**
 * For each lettered length of the finished item the measure that sets it: the one that moves it most, and of equals the
 * first in the file. Lengths that no measure moves are left out.
 */
export function driversOf(subject: Subject): readonly Driver[] {
  const item = itemOf(subject);
  const now = lengthsIn(item, subject.size);
  const moves = item.parameters.filter(({ least }) => least.dimension === 'length').map(({ name, least, most }) => {
    const value = valueIn(item, subject.size, name);
    const by = value.value + NUDGE <= most.value ? NUDGE : -NUDGE;
    const moved = value.value + by < least.value ? null : movedLengths(subject, name, { ...value, value: value.value + by });
    return { name, slopes: new Map([...now].map(([letter, length]) => [letter, moved === null ? 0 : ((moved.get(letter) ?? length) - length) / by])) };
  });
  return [...now.keys()].flatMap((letter): readonly Driver[] => {
    const best = moves.reduce<(typeof moves)[number] | null>((found, each) =>
      (Math.abs(each.slopes.get(letter) ?? 0) > Math.abs(found?.slopes.get(letter) ?? 0) + 1e-6 ? each : found), null);
    return best === null ? [] : [{ letter, parameter: best.name, slope: best.slopes.get(letter) ?? 1 }];
  });
}

const lengthsIn = (item: Item, size: string): ReadonlyMap<string, number> =>
  new Map(buildModel(item, size).dimensions.map(({ letter, value }) => [letter, value]));

const valueIn = (item: Item, size: string, name: string): Quantity =>
  item.sizes.find((each) => each.name === size)?.values[name] ?? { value: 0, dimension: 'length' };

/** The lengths with another value of a measure, or null where that gives no item. */
function movedLengths(subject: Subject, name: string, value: Quantity): ReadonlyMap<string, number> | null {
  try {
    return lengthsIn(itemOf({ ...subject, values: { ...subject.values, [name]: dimensionedText(value) } }), subject.size);
  } catch {
    return null; // this measure cannot move
  }
}
