import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loosePieces, numberedCuts, offCutsOf, overlaps, piecesOf, planSheets, type CutPart, type Edges, type Rectangle, type SheetPiece, type SheetStock } from '../../src/cut/sheets/index.ts';
import { loadSolver } from '../../src/cut/solver.ts';

const solver = await loadSolver();

/** What rounding to the raster may add, mm. */
const HAIR = 0.06;
/** A strip this narrow is not cut off: a piece may be so much larger, mm. */
const SLIVER = 0.51;

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
const panel = (change: Partial<SheetStock> = {}): SheetStock => ({ width: 1500, height: 1000, count: null, cost: 1, defects: [], grain: null, ...change });

/** Follows the cuts: each runs from edge to edge of its part, the kerf lies between the two, a piece fills its part. */
function follow(part: CutPart, region: Rectangle, kerf: number): void {
  switch (part.part) {
    case 'off-cut':
      expect(same(part.region, region)).toBe(true);
      return;
    case 'loose':
      expect(same(part.region, region)).toBe(true);
      for (const lies of part.lies) expect(lies.x >= region.x - HAIR && lies.y >= region.y - HAIR && lies.x + lies.width <= region.x + region.width + HAIR && lies.y + lies.height <= region.y + region.height + HAIR).toBe(true);
      return;
    case 'piece':
      for (const [own, room] of [[part.lies.width, region.width], [part.lies.height, region.height]] as const) {
        expect(own).toBeLessThanOrEqual(room + HAIR);
        expect(room - own).toBeLessThanOrEqual(SLIVER);
      }
      expect(Math.abs(part.lies.x - region.x) <= SLIVER && Math.abs(part.lies.y - region.y) <= SLIVER).toBe(true);
      return;
    case 'cut': {
      expect(same(part.region, region)).toBe(true);
      const along = part.axis === 'x' ? 'width' : 'height';
      // Nearer to the edge than a kerf a cut only shaves it.
      expect(part.at - region[part.axis]).toBeGreaterThanOrEqual(part.first.part === 'off-cut' ? -kerf - HAIR : -HAIR);
      const first = { ...region, [along]: Math.max(0, part.at - region[part.axis]) };
      const second = { ...region, [part.axis]: part.at + kerf, [along]: Math.max(0, region[part.axis] + region[along] - part.at - kerf) };
      follow(part.first, first, kerf);
      follow(part.second, second, kerf);
    }
  }
}

const same = (a: Rectangle, b: Rectangle): boolean =>
  (['x', 'y', 'width', 'height'] as const).every((side) => Math.abs(a[side] - b[side]) <= HAIR) || (b.width <= HAIR && a.width <= HAIR) || (b.height <= HAIR && a.height <= HAIR);

const near = (one: number, other: number): boolean => Math.abs(one - other) <= 0.02;

/** Everything that must hold of a plan. */
function holds(pieces: readonly SheetPiece[], stocks: readonly SheetStock[], kerf: number, edges: Edges = 'straight'): void {
  const plan = planSheets(pieces, stocks, kerf, solver, { edges });
  const count = (piece: number): number => sum(plan.ways.map(({ times, cuts }) => times * piecesOf(cuts).filter((lies) => lies.piece === piece).length));
  expect(pieces.map((_, piece) => count(piece) + (plan.missing[piece] ?? 0))).toEqual(pieces.map(({ count: wanted }) => wanted));
  expect(plan.bound).toBeLessThanOrEqual(plan.cost + 1e-6);
  stocks.forEach((stock, index) => {
    const taken = plan.ways.filter((way) => way.stock === index);
    if (stock.count !== null) expect(sum(taken.map(({ times }) => times))).toBeLessThanOrEqual(stock.count);
    for (const { cuts } of taken) {
      follow(cuts, { x: 0, y: 0, width: stock.width, height: stock.height }, kerf);
      const lying = piecesOf(cuts);
      if (edges === 'straight') expect(loosePieces(cuts)).toEqual([]);
      for (const lies of lying) {
        const { width, height, turn } = pieces[lies.piece] ?? { width: 0, height: 0, turn: false };
        expect(lies.turned ? near(lies.width, height) && near(lies.height, width) : near(lies.width, width) && near(lies.height, height)).toBe(true);
        if (!turn) expect(lies.turned).toBe(false);
        if (stock.grain !== null && turn && width !== height) expect(lies.width > lies.height).toBe(stock.grain === 'x');
        for (const defect of stock.defects) expect(overlaps(inside(lies), defect)).toBe(false);
        for (const other of lying) if (other !== lies) expect(overlaps(inside(lies), other)).toBe(false);
      }
      // No cut runs through a piece.
      for (const { axis, at, from, to } of numberedCuts(cuts)) {
        for (const lies of lying) expect(overlaps(inside(lies), axis === 'x' ? { x: at, y: from, width: kerf, height: to - from } : { x: from, y: at, width: to - from, height: kerf })).toBe(false);
      }
      const area = sum([...lying, ...offCutsOf(cuts)].map(({ width, height }) => width * height));
      expect(area).toBeLessThanOrEqual(stock.width * stock.height * (1 + 1e-4));
    }
  });
}

const inside = ({ x, y, width, height }: Rectangle): Rectangle => ({ x: x + HAIR, y: y + HAIR, width: width - 2 * HAIR, height: height - 2 * HAIR });

const anyPieces: fc.Arbitrary<readonly SheetPiece[]> = fc.array(fc.record({
  width: fc.integer({ min: 120, max: 900 }), height: fc.integer({ min: 120, max: 900 }), count: fc.integer({ min: 1, max: 5 }), turn: fc.boolean(),
}), { minLength: 1, maxLength: 4 });

const anyDefect: fc.Arbitrary<Rectangle> = fc.record({ x: fc.integer({ min: 0, max: 1300 }), y: fc.integer({ min: 0, max: 900 }), width: fc.integer({ min: 5, max: 200 }), height: fc.integer({ min: 5, max: 100 }) });
const rib: fc.Arbitrary<Rectangle> = fc.oneof(
  fc.integer({ min: 0, max: 1400 }).map((x) => ({ x, y: 0, width: 40, height: 1000 })),
  fc.integer({ min: 0, max: 950 }).map((y) => ({ x: 0, y, width: 1500, height: 40 })),
);

describe('any pieces from whole panels', () => {
  it('are cut exactly as often as wanted, by cuts from edge to edge, the kerf between them', () => {
    fc.assert(fc.property(anyPieces, fc.integer({ min: 0, max: 4 }), (pieces, kerf) => { holds(pieces, [panel()], kerf); }), { numRuns: 30 });
  });

  it('lie along the grain', () => {
    fc.assert(fc.property(anyPieces, fc.constantFrom('x' as const, 'y' as const), (pieces, grain) => {
      holds(pieces.map((piece) => ({ ...piece, turn: true })), [panel({ grain })], 0);
    }), { numRuns: 15 });
  });
});

describe('any pieces from damaged panels and whole ones', () => {
  it('touch no defect, and no pile is overdrawn', () => {
    fc.assert(fc.property(anyPieces, fc.array(fc.oneof(anyDefect, rib), { minLength: 1, maxLength: 3 }), fc.integer({ min: 0, max: 3 }), (pieces, defects, kerf) => {
      holds(pieces, [panel({ defects, count: 2, cost: 0 }), panel({ width: 1200, height: 800, defects: defects.slice(0, 1).map((each) => ({ ...each, x: each.x % 1000, y: each.y % 700 })), count: 1, cost: 0 }), panel()], kerf);
    }), { numRuns: 25 });
  });

  it('bounds that are proven hold against one more way of cutting: no whole panel where the damaged ones do', () => {
    const half: Rectangle = { x: 740, y: 0, width: 20, height: 1000 };
    const plan = planSheets([{ width: 730, height: 480, count: 8, turn: true }], [panel({ defects: [half], count: 2, cost: 0 }), panel()], 0, solver);
    expect({ cost: plan.cost, bound: plan.bound }).toEqual({ cost: 0, bound: 0 });
  });

  it('a defect in the middle halves what a panel gives', () => {
    const middle: Rectangle = { x: 745, y: 495, width: 10, height: 10 };
    const plan = planSheets([{ width: 1000, height: 480, count: 4, turn: false }], [panel({ defects: [middle] })], 0, solver);
    expect({ cost: plan.cost, proven: plan.proven }).toEqual({ cost: 2, proven: true });
    const wide = planSheets([{ width: 1000, height: 500, count: 4, turn: false }], [panel({ defects: [middle] })], 0, solver);
    expect(sum(wide.missing)).toBe(4);
  });
});

describe('any cuts', () => {
  it('part pieces that no straight cut does, and prove no more than holds of them', () => {
    // Four pieces of 3 × 2 round one of 1 × 1 fill a sheet of 5 × 5, and no straight cut from edge to edge parts them (C).
    const pieces = [{ width: 300, height: 200, count: 8, turn: true }, { width: 100, height: 100, count: 2, turn: false }];
    const sheet = [panel({ width: 500, height: 500 })];
    const [straight, any] = [planSheets(pieces, sheet, 0, solver), planSheets(pieces, sheet, 0, solver, { edges: 'any' })];
    expect({ straight: straight.cost, any: any.cost, bound: any.bound }).toEqual({ straight: 3, any: 2, bound: 2 });
  });

  it('touch no defect and no other piece', () => {
    fc.assert(fc.property(anyPieces, fc.array(anyDefect, { maxLength: 2 }), fc.integer({ min: 0, max: 3 }), (pieces, defects, kerf) => {
      holds(pieces, [panel({ defects, count: 2, cost: 0 }), panel()], kerf, 'any');
    }), { numRuns: 15 });
  });
});

describe('the numbered cuts', () => {
  it('are numbered from one, each in a part that the cuts before it have freed', () => {
    fc.assert(fc.property(anyPieces, (pieces) => {
      for (const { cuts } of planSheets(pieces, [panel()], 0, solver).ways) {
        let parts: readonly Rectangle[] = [{ x: 0, y: 0, width: 1500, height: 1000 }];
        numberedCuts(cuts).forEach((cut, index) => {
          expect(cut.number).toBe(index + 1);
          const whole = parts.find((part) => (cut.axis === 'x'
            ? near(part.y, cut.from) && near(part.y + part.height, cut.to) && cut.at > part.x - 1e-9 && cut.at < part.x + part.width + 1e-9
            : near(part.x, cut.from) && near(part.x + part.width, cut.to) && cut.at > part.y - 1e-9 && cut.at < part.y + part.height + 1e-9));
          expect(whole).toBeDefined();
          if (whole === undefined) return;
          const [one, other] = cut.axis === 'x'
            ? [{ ...whole, width: cut.at - whole.x }, { ...whole, x: cut.at, width: whole.x + whole.width - cut.at }]
            : [{ ...whole, height: cut.at - whole.y }, { ...whole, y: cut.at, height: whole.y + whole.height - cut.at }];
          parts = [...parts.filter((part) => part !== whole), one, other];
        });
      }
    }), { numRuns: 20 });
  });
});

/** The most pieces of one size that cuts from edge to edge give, by trying every cut at multiples of its sides. */
function mostByTrying(width: number, height: number, [w, h]: readonly [number, number], known = new Map<string, number>()): number {
  if ((width < w || height < h) && (width < h || height < w)) return 0;
  const key = `${width},${height}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  let most = 1;
  for (const side of [w, h]) {
    for (let at = side; at < width; at += side) most = Math.max(most, mostByTrying(at, height, [w, h], known) + mostByTrying(width - at, height, [w, h], known));
    for (let at = side; at < height; at += side) most = Math.max(most, mostByTrying(width, at, [w, h], known) + mostByTrying(width, height - at, [w, h], known));
  }
  known.set(key, most);
  return most;
}

describe('pieces of one size against every way of cutting them', () => {
  it('take as few panels as that allows', () => {
    fc.assert(fc.property(fc.integer({ min: 150, max: 700 }), fc.integer({ min: 150, max: 700 }), (width, height) => {
      const most = mostByTrying(1500, 1000, [width, height]);
      const plan = planSheets([{ width, height, count: 3 * most, turn: true }], [panel()], 0, solver, { nicest: false });
      expect({ cost: plan.cost, proven: plan.proven }).toEqual({ cost: 3, proven: true });
    }), { numRuns: 25 });
  });
});
