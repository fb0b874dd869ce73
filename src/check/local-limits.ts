import { seen, type Kit } from '../read/index.ts';
import type { Limits } from './limits.ts';

/** The table with the values that a kit sets by local rules; the source of each says so, and what it stands in place of. What the kit says turns nothing of that round. */
export function withLocal(limits: Limits, { localLimits = {} }: Pick<Kit, 'localLimits'>): Limits {
  const names = Object.keys(localLimits) as (keyof typeof localLimits)[];
  return names.reduce((table: Limits, name) => {
    const own = localLimits[name];
    const { value, unit } = limits[name];
    return own === undefined ? table : { ...table, [name]: { value: own.value, unit, source: `${seen(own.source)} (local value of the kit, in place of ${value}${unit === '1' ? '' : ` ${unit}`})` } };
  }, limits);
}
