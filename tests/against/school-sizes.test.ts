// EN 1729-1 size marks: seat and table heights 1–6 as three published summaries agree (R2), 7 rounded in its summary (R2), 0 from memory (M); colours (R).
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { filesOnDisk, readItem } from '../../src/read/index.ts';
import type { Item } from '../../src/read/index.ts';

/** Mark, seat mm, table mm, colour, and how the heights are known. */
const standard = [
  [0, 210, 400, 'white', 'memory'],
  [1, 260, 460, 'orange', 'read'],
  [2, 310, 530, 'violet', 'read'],
  [3, 350, 590, 'yellow', 'read'],
  [4, 380, 640, 'red', 'read'],
  [5, 430, 710, 'green', 'read'],
  [6, 460, 760, 'blue', 'read'],
  [7, 510, 820, 'brown', 'rounded'],
] as const;

interface Row {
  readonly mark: number;
  readonly seat: string;
  readonly table: string;
  readonly colour: string;
  readonly source: string;
}

const files = filesOnDisk(fileURLToPath(new URL('../..', import.meta.url)));
const table: { readonly marks: readonly Row[] } = parse(files.text('steps/tables/school-sizes.yaml') ?? '');

/** The table's height for a size such as `mark-3`, in mm. */
function tableHeight(size: string, column: 'seat' | 'table'): number | undefined {
  const row = table.marks.find(({ mark }) => `mark-${mark}` === size);
  return row === undefined ? undefined : Number(/^(\d+) mm$/.exec(row[column])?.[1]);
}

/** Height of the upper face of the item's one deck, in mm, as the item's own expression gives it for a size. */
function deckHeight(item: Item, size: string): number | undefined {
  const deck = item.pieces.find((piece) => piece.is === 'deck');
  const values = item.sizes.find(({ name }) => name === size)?.values;
  return deck?.is === 'deck' && values !== undefined ? deck.top.evaluate({ ...values, index: { value: 0, dimension: 'count' } }).value : undefined;
}

describe('the table of school sizes', () => {
  it('has the heights and colours of the size marks, and says how it knows them', () => {
    expect(table.marks.map(({ mark, seat, table: top, colour, source }) => [mark, seat, top, colour, source]))
      .toEqual(standard.map(([mark, seat, top, colour, source]) => [mark, `${seat} mm`, `${top} mm`, colour, source]));
  });

  it('rises from mark to mark, and a table stands higher over a higher seat (C)', () => {
    const pairs = standard.slice(1).map((row, at) => [standard[at], row] as const);
    for (const [lower, higher] of pairs) {
      expect(higher[1]).toBeGreaterThan(lower?.[1] ?? Infinity);
      expect(higher[2] - higher[1]).toBeGreaterThanOrEqual((lower?.[2] ?? 0) - (lower?.[1] ?? 0));
    }
  });
});

describe.each([['desk', 'table'], ['chair', 'seat']] as const)('the sizes of the %s', (name, column) => {
  const item = readItem(files, `steps/${name}/item.yaml`);

  it('are size marks, 2 to 6 at least', () => {
    expect(item.sizes.map((size) => size.name)).toEqual(expect.arrayContaining(['mark-2', 'mark-3', 'mark-4', 'mark-5', 'mark-6']));
  });

  it.each(item.sizes.map((size) => size.name))('%s is as high as the table says', (size) => {
    const height = deckHeight(item, size);
    expect(height).toBeTypeOf('number');
    expect(height).toBe(tableHeight(size, column));
  });
});
