import { createHash } from 'node:crypto';

/**
 * What `npm test` tries of all there is. `npm run test:all` tries everything; otherwise a test that goes through sizes,
 * languages or papers takes a sample. It hangs on the seed, the test's own key and the names of what there is, on
 * nothing else: the same on every machine, and what is added changes little of it.
 */
const SEED = 'Tern Island';

/** Whether everything is tried; vitest.config.ts sets it by the mode. */
export const everything: boolean = process.env['FOLDWRIGHT_TESTS'] === 'all';

const named = (each: unknown): string => JSON.stringify(each);

/** A thing's lot in the draw of this key: the lowest is drawn first. */
const lot = (key: string, name: string): string => createHash('sha256').update(named([SEED, key, name])).digest('hex');

/** Draws `count` of a list, at least one, and gives them in the list's order. `nameOf` tells them apart. */
export function drawn<T>(list: readonly T[], key: string, count: number, nameOf: (each: T) => string = named): readonly T[] {
  const lots = list.map((each) => lot(key, nameOf(each))).sort();
  const last = lots[Math.min(Math.max(1, count), lots.length) - 1] ?? '';
  return list.filter((each) => lot(key, nameOf(each)) <= last);
}

/**
 * Draws rows of a table so that what stands in each of these groups of columns is drawn at least once: of the groups
 * [['item', 'lang'], ['paper']] every item there is in every language, and every paper. What a row already drawn has is
 * not drawn again.
 */
export function covering<Row extends object>(rows: readonly Row[], key: string, groups: readonly (readonly (keyof Row)[])[]): readonly Row[] {
  const taken = groups.reduce<ReadonlySet<Row>>((chosen, group) => {
    const part = (row: Row): string => named(group.map((column) => row[column]));
    const had = new Set([...chosen].map(part));
    const first = new Map<string, { readonly row: Row; readonly lot: string }>();
    for (const row of rows.filter((each) => !had.has(part(each)))) {
      const own = lot(key, named(row));
      if (own < (first.get(part(row))?.lot ?? '~')) first.set(part(row), { row, lot: own });
    }
    return new Set([...chosen, ...[...first.values()].map(({ row }) => row)]);
  }, new Set());
  return rows.filter((row) => taken.has(row));
}

/** All of a list, or so many of it as a sample. */
export const sampled = <T>(list: readonly T[], key: string, count: number, nameOf?: (each: T) => string): readonly T[] =>
  (everything ? list : drawn(list, key, count, nameOf));

/** All rows of a table, or a sample that covers these groups of columns. */
export const sampledRows = <Row extends object>(rows: readonly Row[], key: string, groups: readonly (readonly (keyof Row)[])[]): readonly Row[] =>
  (everything ? rows : covering(rows, key, groups));
