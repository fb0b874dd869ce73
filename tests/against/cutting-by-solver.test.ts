// Cutting stock and two-dimensional packing with known optima: sources and tags stand in cutting-instances.ts; kerf by shrinking (C).
import { describe, expect, it } from 'vitest';
import { planLengths, type LengthPiece, type LengthPlan } from '../../src/cut/lengths/index.ts';
import { bestLayouts } from '../../src/cut/sheets/layouts.ts';
import { planSheets, type SheetPiece } from '../../src/cut/sheets/index.ts';
import { boardOf } from '../../src/cut/sheets/raster.ts';
import { loadSolver } from '../../src/cut/solver.ts';
import { binInstances, knapsackInstances, lengthInstances, type LengthInstance, type SheetItem } from './cutting-instances.ts';

const solver = await loadSolver();

/** Pieces of one length counted together. */
function piecesOf({ lengths, counts }: LengthInstance, shorter: number): readonly LengthPiece[] {
  const all = new Map<number, number>();
  lengths.forEach((length, index) => all.set(length, (all.get(length) ?? 0) + (counts?.[index] ?? 1)));
  return [...all].map(([length, count]) => ({ length: length - shorter, count }));
}

/** Sawn with a saw that takes `kerf`, from pieces and stock shrunk by it: the same problem, exactly (C). */
const sawn = (instance: LengthInstance, kerf: number): LengthPlan =>
  planLengths(piecesOf(instance, kerf), [{ length: instance.stock - kerf, count: null, cost: 1 }], { kerf, play: 0 }, solver, false);

describe('one length of stock, optimum known', () => {
  it.each(lengthInstances)('$name: $optimum, proven', (instance) => {
    const { cost, bound, proven } = sawn(instance, 0);
    expect({ cost, bound, proven }).toEqual({ cost: instance.optimum, bound: instance.optimum, proven: true });
  });

  it.each(lengthInstances.slice(0, 6))('$name: the same with a saw, and of play enough for the saw', (instance) => {
    expect(sawn(instance, 2).cost).toBe(instance.optimum);
    const free = planLengths(piecesOf(instance, 0), [{ length: instance.stock, count: null, cost: 1 }], { kerf: 2, play: 2 }, solver, false);
    expect(free.cost).toBe(instance.optimum);
  });
});

const pieces = (items: readonly SheetItem[], turn: boolean, count: (copies: number) => number = (copies) => copies): readonly SheetPiece[] =>
  items.map(([width, height, copies]) => ({ width, height, count: count(copies), turn }));

describe('one sheet, the most worth by cuts from edge to edge', () => {
  const cases = knapsackInstances.flatMap((instance) => [{ ...instance, turn: false, best: instance.fixed }, { ...instance, turn: true, best: instance.turned }])
    .flatMap(({ best, ...rest }) => (best === null ? [] : [{ ...rest, best }]));

  it.each(cases)('$name, turned $turn: $best', ({ sheet, items, unlimited, turn, best }) => {
    const wanted = pieces(items, turn, (copies) => (unlimited === true ? 99 : copies));
    const stock = { width: sheet[0], height: sheet[1], count: null, cost: 1, defects: [], grain: null };
    const worths = items.map(([width, height, , worth]) => worth ?? width * height);
    const found = bestLayouts(boardOf(wanted, stock, 0), worths, wanted.map(({ count }) => count));
    expect(found.layouts[0]?.worth).toBe(best);
    expect(found.worth).toBeGreaterThanOrEqual(best);
  });
});

describe('as few sheets as can be', () => {
  const cases = binInstances.flatMap((instance) => [{ ...instance, turn: false, best: instance.fixed }, { ...instance, turn: true, best: instance.turned }]);

  it.each(cases)('$name, turned $turn: $best', ({ sheet, items, turn, best }) => {
    const { cost, bound } = planSheets(pieces(items, turn), [{ width: sheet[0], height: sheet[1], count: null, cost: 1, defects: [], grain: null }], 0, solver, { nicest: false });
    expect(cost).toBe(best);
    expect(bound).toBeLessThanOrEqual(best);
    // Our own bound never tells less than the area, and is at most a sheet short.
    expect(bound).toBeGreaterThanOrEqual(Math.ceil(items.reduce((sum, [width, height, copies]) => sum + width * height * copies, 0) / (sheet[0] * sheet[1])));
    expect(bound).toBeGreaterThanOrEqual(best - 1);
  });
});
