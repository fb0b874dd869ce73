import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planFew, planLengths, type LengthPiece, type LengthPlan, type LengthStock, type SawRules } from '../../src/cut/lengths/index.ts';
import { lengthWishes } from '../../src/cut/lengths/length-wishes.ts';
import { loadSolver } from '../../src/cut/solver.ts';

const solver = await loadSolver();

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
const made = (plan: LengthPlan, piece: number): number => sum(plan.ways.map(({ times, makes }) => times * (makes[piece] ?? 0)));

/** Whether so many pieces of such lengths fit: each gives up its share of the cuts that find no room beside them. */
function fits(lengths: readonly number[], stock: number, { kerf, play }: SawRules): boolean {
  const filled = sum(lengths);
  return filled <= stock + 0.051 && filled + kerf * (lengths.length - 1) - stock <= play * lengths.length + 0.051;
}

const lengthsOf = (makes: readonly number[], pieces: readonly LengthPiece[]): readonly number[] =>
  makes.flatMap((count, index) => Array.from({ length: count }, () => pieces[index]?.length ?? 0));

const anyPieces: fc.Arbitrary<readonly LengthPiece[]> = fc.uniqueArray(fc.record({ length: fc.integer({ min: 150, max: 1990 }), count: fc.integer({ min: 1, max: 9 }) }),
  { minLength: 1, maxLength: 6, selector: ({ length }) => length });
const anySaw: fc.Arbitrary<SawRules> = fc.record({ kerf: fc.integer({ min: 0, max: 4 }), play: fc.integer({ min: 0, max: 4 }) });
const whole: LengthStock = { length: 2000, count: null, cost: 1 };

describe('any pieces from tubes of one length', () => {
  it('are each sawn exactly as often as wanted, no tube is overfilled, and the tubes are counted', () => {
    fc.assert(fc.property(anyPieces, anySaw, (pieces, saw) => {
      const plan = planLengths(pieces, [whole], saw, solver);
      expect(pieces.map((_, piece) => made(plan, piece))).toEqual(pieces.map(({ count }) => count));
      for (const { makes } of plan.ways) expect(fits(lengthsOf(makes, pieces), 2000, saw)).toBe(true);
      expect(sum(plan.ways.map(({ times }) => times))).toBeLessThanOrEqual(plan.cost);
      expect(plan.bound).toBeLessThanOrEqual(plan.cost);
      expect(plan.missing.every((count) => count === 0)).toBe(true);
    }), { numRuns: 40 });
  });

  it('the nicest of the cheapest costs no more than the cheapest', () => {
    fc.assert(fc.property(anyPieces, (pieces) => {
      const saw = { kerf: 1, play: 2 };
      expect(planLengths(pieces, [whole], saw, solver).cost).toBe(planLengths(pieces, [whole], saw, solver, false).cost);
    }), { numRuns: 15 });
  });

  it('give the same plan twice', () => {
    const pieces = [{ length: 626, count: 7 }, { length: 362, count: 9 }, { length: 250, count: 20 }];
    expect(planLengths(pieces, [whole], { kerf: 1, play: 2 }, solver)).toEqual(planLengths(pieces, [whole], { kerf: 1, play: 2 }, solver));
  });
});

/** The least cost of sawing a handful of pieces from stock, by trying every way. */
function leastByTrying(lengths: readonly number[], stocks: readonly LengthStock[], saw: SawRules): number {
  const best = (left: readonly number[], open: readonly { readonly stock: LengthStock; readonly cut: readonly number[] }[]): number => {
    const [piece, ...rest] = left;
    if (piece === undefined) return sum(open.map(({ stock }) => stock.cost));
    const into = open.flatMap((each, at) => {
      const cut = [...each.cut, piece];
      return fits(cut, each.stock.length, saw) ? [best(rest, open.map((other, index) => (index === at ? { ...other, cut } : other)))] : [];
    });
    const fresh = stocks.flatMap((stock) => (piece <= stock.length && open.filter((each) => each.stock === stock).length < (stock.count ?? Infinity)
      ? [best(rest, [...open, { stock, cut: [piece] }])] : []));
    return Math.min(Infinity, ...into, ...fresh);
  };
  return best(lengths, []);
}

describe('a handful of pieces against every way of sawing them', () => {
  const few = fc.array(fc.integer({ min: 150, max: 1200 }), { minLength: 1, maxLength: 6 });

  it('from tubes of one length: as few as can be, and proven', () => {
    fc.assert(fc.property(few, anySaw, (lengths, saw) => {
      const pieces = [...new Set(lengths)].map((length) => ({ length, count: lengths.filter((each) => each === length).length }));
      const { cost, proven } = planLengths(pieces, [whole], saw, solver, false);
      expect(cost).toBe(leastByTrying(lengths, [whole], saw));
      expect(proven).toBe(true);
    }), { numRuns: 60 });
  });

  it('from counted tubes of two lengths and as many whole ones as wanted: at the least cost', () => {
    const stocks: readonly LengthStock[] = [{ length: 1480, count: 1, cost: 1480 }, { length: 1820, count: 2, cost: 1820 }, { length: 2000, count: null, cost: 2000 }];
    fc.assert(fc.property(few, (lengths) => {
      const saw = { kerf: 2, play: 0 };
      const pieces = [...new Set(lengths)].map((length) => ({ length, count: lengths.filter((each) => each === length).length }));
      const { cost, bound } = planLengths(pieces, stocks, saw, solver, false);
      expect(cost).toBe(leastByTrying(lengths, stocks, saw));
      expect(bound).toBeLessThanOrEqual(cost);
    }), { numRuns: 40 });
  });
});

describe('wishes among equally cheap plans', () => {
  it('keep one long off-cut instead of two short ones', () => {
    const plan = planLengths([{ length: 900, count: 3 }, { length: 100, count: 1 }], [whole], { kerf: 0, play: 0 }, solver);
    const left = plan.ways.flatMap(({ times, makes }) => Array.from({ length: times }, () => 2000 - 900 * (makes[0] ?? 0) - 100 * (makes[1] ?? 0)));
    expect([...left].sort((a, b) => a - b)).toEqual([100, 1100]);
  });

  it('take plain fractions where they cost nothing, and few ways (common practice, no source)', () => {
    const plan = planLengths([{ length: 1000, count: 4 }, { length: 500, count: 8 }], [whole], { kerf: 1, play: 2 }, solver);
    expect(plan.ways).toEqual([{ stock: 0, times: 4, makes: [1, 2] }]);
    const { nicety } = lengthWishes([{ length: 1000, count: 1 }, { length: 1100, count: 1 }, { length: 900, count: 1 }], [whole], { kerf: 1, play: 2 });
    expect(nicety({ stock: 0, makes: [2, 0, 0] })).toBeGreaterThan(nicety({ stock: 0, makes: [0, 1, 1] }));
  });

  it('take tubes of one length where they cost nothing: halves from one, quarters from another', () => {
    const plan = planLengths([{ length: 1500, count: 4 }, { length: 1000, count: 8 }, { length: 500, count: 8 }], [whole], { kerf: 1, play: 2 }, solver);
    expect(plan.ways.map(({ times, makes }) => [times, ...makes])).toEqual(expect.arrayContaining([[4, 1, 0, 1], [4, 0, 2, 0], [1, 0, 0, 4]]));
  });

  // A counted stock takes no short cut, so that the solver is asked.
  it('are weighed best where every plan is looked at: no worse than by the solver, for as many tubes', () => {
    fc.assert(fc.property(fc.uniqueArray(fc.record({ length: fc.integer({ min: 200, max: 1500 }), count: fc.integer({ min: 1, max: 5 }) }), { minLength: 1, maxLength: 4, selector: ({ length }) => length }), (pieces) => {
      const saw = { kerf: 1, play: 2 };
      const { nicety, perWay } = lengthWishes(pieces, [whole], saw);
      const weight = ({ ways }: LengthPlan): number => sum(ways.map(({ times, makes }) => perWay - times * nicety({ stock: 0, makes })));
      const few = planFew(pieces, [whole], saw);
      if (few === null) throw new Error('too many plans for a handful');
      const bySolver = planLengths(pieces, [{ ...whole, count: 40 }], saw, solver);
      expect(few.cost).toBe(bySolver.cost);
      expect(few.proven).toBe(true);
      expect(weight(few)).toBeLessThanOrEqual(weight(bySolver) + 1e-6);
    }), { numRuns: 15 });
  });
});

describe('what does not go', () => {
  it('is told as missing: a piece longer than every tube, or more than a counted stock gives', () => {
    const counted = { length: 2000, count: 1, cost: 1 };
    expect(planLengths([{ length: 2100, count: 2 }], [whole], { kerf: 1, play: 2 }, solver).missing).toEqual([2]);
    expect(planLengths([{ length: 1500, count: 3 }], [counted], { kerf: 1, play: 2 }, solver).missing).toEqual([2]);
  });

  it('is nothing where nothing is wanted', () => {
    expect(planLengths([], [whole], { kerf: 1, play: 2 }, solver)).toEqual({ ways: [], missing: [], cost: 0, bound: 0, proven: true });
  });
});
