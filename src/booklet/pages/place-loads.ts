import type { Advice } from '../../check/index.ts';
import type { Model } from '../../model/index.ts';
import type { Words } from '../words/index.ts';
import { loadInKilograms } from './load-in-kilograms.ts';

/** What is printed of the places that bear something, kg. */
export interface PrintedLoads {
  /** On each place of a level, from the highest level down; one figure where all bear alike. Side by side the least is told. */
  readonly levels: readonly number[];
  readonly places: number;
  /** Each level from the highest down: on each of its places, and how many are side by side there. */
  readonly rows: readonly { readonly kilograms: number; readonly count: number }[];
  /** On all of them at once; null for one place. */
  readonly together: number | null;
}

/** Places as high as each other within this are one level, mm. */
const LEVEL = 5;

/** Null where no load is supported. */
export function printedLoads({ safeLoadPerDeck, loads }: Pick<Advice, 'safeLoadPerDeck' | 'loads'>): PrintedLoads | null {
  const least = safeLoadPerDeck === null ? 0 : loadInKilograms(safeLoadPerDeck);
  if (least === 0) return null;
  const each = loads.map(({ height, load }) => ({ height, kilograms: loadInKilograms(load) }));
  const places = Math.max(1, loads.length);
  const tops = each.filter(({ height }, index) => index === 0 || (each[index - 1]?.height ?? Infinity) - height > LEVEL);
  const rows = tops.map((top) => {
    const level = each.filter(({ height }) => Math.abs(height - top.height) <= LEVEL);
    return { kilograms: Math.min(...level.map(({ kilograms }) => kilograms)), count: level.length };
  });
  if (each.every(({ kilograms }) => kilograms === each[0]?.kilograms)) return { levels: [least], places, rows: rows.map(({ count }) => ({ kilograms: least, count })), together: places === 1 ? null : places * least };
  return { levels: rows.map(({ kilograms }) => kilograms), places, rows, together: each.reduce((sum, { kilograms }) => sum + kilograms, 0) };
}

/** The same in a language's words. */
export function loadsSaid(words: Words, { use, deckTops }: Pick<Model, 'use' | 'deckTops'>, printed: PrintedLoads | null): string {
  if (printed === null) return words.t('booklet.no-safe-load');
  const { levels, places, together } = printed;
  const loads = levels.map((kilograms) => words.measure(kilograms, 'kg'));
  const [load = ''] = loads;
  const all = together === null ? '' : ` ${words.t('booklet.safe-together', { load: words.measure(together, 'kg') })}`;
  if (loads.length > 1) return words.t('booklet.safe-levels', { loads: loads.join(' / ') }) + all;
  switch (use) {
    case 'seat': return words.t(places > 1 ? 'booklet.safe-seats' : 'booklet.safe-seat', { load }) + all;
    case 'bed': return words.t('booklet.safe-bed', { load });
    default: return words.t('booklet.safe-load', { load, count: deckTops.length }) + all;
  }
}
