// One-dimensional cutting with known optima (C): Chvátal 1983, the 5600 mm paper mill, a triplet of nine, Falkenauer u120; first fit decreasing as told of them, and its bound by Dósa 2007 (M).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planTubes, type TubeCutPlan } from '../../src/cut/index.ts';
import { firstFit } from '../cut/first-fit.ts';
import { rackModel } from '../support/rack.ts';

const rack = rackModel('low');

interface Instance {
  readonly stock: number;
  readonly lengths: readonly number[];
  readonly counts?: readonly number[];
}

/** Cuts with a saw that takes `kerf` mm, and joints without play. */
const cut = ({ stock, lengths, counts }: Instance, kerf = 0): Promise<TubeCutPlan> => planTubes({
  ...rack,
  tubes: lengths.map((length, index) => ({ kind: 'post', length, count: counts?.[index] ?? 1 })),
  kit: {
    ...rack.kit,
    tube: { ...rack.kit.tube, length: stock },
    joint: { ...rack.kit.joint, endPlay: 0 },
    practice: { ...rack.kit.practice, sawKerf: kerf },
  },
});

const chvatal: Instance = { stock: 100, lengths: [45, 36, 31, 14], counts: [97, 610, 395, 211] };
const paperMill: Instance = {
  stock: 5600,
  lengths: [1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200],
  counts: [22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20],
};
const triplet: Instance = { stock: 1000, lengths: [471, 402, 366, 347, 333, 301, 265, 264, 251] };
/** Falkenauer u120_00, optimum 48 (C). */
const falkenauer: Instance = {
  stock: 150,
  lengths: [
    42, 69, 67, 57, 93, 90, 38, 36, 45, 42, 33, 79, 27, 57, 44, 84, 86, 92, 46, 38, 85, 33, 82, 73, 49, 70, 59, 23, 57, 72,
    74, 69, 33, 42, 28, 46, 30, 64, 29, 74, 41, 49, 55, 98, 80, 32, 25, 38, 82, 30, 35, 39, 57, 84, 62, 50, 55, 27, 30, 36,
    20, 78, 47, 26, 45, 41, 58, 98, 91, 96, 73, 84, 37, 93, 91, 43, 73, 85, 81, 79, 71, 80, 76, 83, 41, 78, 70, 23, 42, 87,
    43, 84, 60, 55, 49, 78, 73, 62, 36, 44, 94, 69, 32, 96, 70, 84, 58, 78, 25, 80, 58, 66, 83, 24, 98, 60, 42, 43, 43, 39,
  ],
};

const instances = [
  { name: 'Chvátal', instance: chvatal, optimum: 453, firstFit: 485 },
  { name: 'paper mill', instance: paperMill, optimum: 73, firstFit: 82 },
  { name: 'MiniZinc', instance: { stock: 10, lengths: [7, 5, 3], counts: [2, 2, 4] }, optimum: 4, firstFit: null },
  { name: 'triplet of nine', instance: triplet, optimum: 3, firstFit: 4 },
  { name: 'Falkenauer u120_00', instance: falkenauer, optimum: 48, firstFit: null },
] as const;

describe('instances with a proven optimum', () => {
  it.each(instances)('$name: sawn from $optimum tubes, and known to be the fewest', async ({ instance, optimum }) => {
    const { fewest, tubesUsed } = await cut(instance);
    expect({ fewest, tubesUsed }).toEqual({ fewest: optimum, tubesUsed: optimum });
  });

  it.each(instances)('$name: first fit decreasing, held against it elsewhere, is within its bound and uses what is told of it', ({ instance: { stock, lengths, counts }, optimum, firstFit: told }) => {
    const used = firstFit(lengths.map((length, index) => ({ length, count: counts?.[index] ?? 1 })), stock, { kerf: 0, play: 0 });
    expect(used).toBeLessThanOrEqual(Math.floor((11 * optimum + 6) / 9));
    if (told !== null) expect(used).toBe(told);
  });

  // Shrink every piece and the stock by k and cut with kerf k: the same cutting problem, exactly (C).
  it.each(instances)('$name: shrunk by a saw cut and cut with that saw, uses the same', async ({ instance, optimum }) => {
    const kerf = 2;
    const shrunk = { ...instance, stock: instance.stock - kerf, lengths: instance.lengths.map((length) => length - kerf) };
    expect((await cut(shrunk, kerf)).tubesUsed).toBe(optimum);
  });
});

/** The fewest stock lengths, by trying every way: for a handful of pieces. */
function fewestByTrying(lengths: readonly number[], stock: number, open: readonly number[] = []): number {
  const [piece, ...rest] = lengths;
  if (piece === undefined) return open.length;
  const intoOpen = open.flatMap((used, index) => (used + piece <= stock && open.indexOf(used) === index
    ? [fewestByTrying(rest, stock, open.map((other, at) => (at === index ? other + piece : other)))] : []));
  return Math.min(...intoOpen, fewestByTrying(rest, stock, [...open, piece]));
}

describe('a handful of pieces against every way of cutting them', () => {
  it('takes the fewest tubes', async () => {
    await fc.assert(fc.asyncProperty(fc.array(fc.integer({ min: 20, max: 100 }), { minLength: 1, maxLength: 8 }), async (lengths) => {
      const optimum = fewestByTrying(lengths, 100);
      const { fewest, tubesUsed } = await cut({ stock: 100, lengths });
      expect({ fewest, tubesUsed }).toEqual({ fewest: optimum, tubesUsed: optimum });
    }));
  });
});
