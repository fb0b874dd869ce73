import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planTubes, type TubeCutPlan } from '../../src/cut/index.ts';
import type { Model, TubeNeed } from '../../src/model/index.ts';
import { rackModel, sizes } from '../support/rack.ts';

const standard = rackModel('standard');

interface Stock {
  readonly length?: number;
  readonly kerf?: number;
  readonly endPlay?: number;
}

/** The standard rack asking for other tubes, sawn from other stock. */
const asking = (tubes: readonly TubeNeed[], { length = 2000, kerf = 1, endPlay = 2 }: Stock = {}): Model => ({
  ...standard,
  tubes,
  kit: {
    ...standard.kit,
    tube: { ...standard.kit.tube, length },
    joint: { ...standard.kit.joint, endPlay },
    practice: { ...standard.kit.practice, sawKerf: kerf },
  },
});

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

/** Every piece that the plan saws, written out. */
const sawn = (plan: TubeCutPlan): readonly string[] =>
  plan.patterns.flatMap(({ count, pieces }) => Array.from({ length: count }, () => pieces.map(({ kind, length }) => `${kind} ${length}`)).flat()).sort();

const wanted = (tubes: readonly TubeNeed[]): readonly string[] =>
  tubes.flatMap(({ kind, length, count }) => Array.from({ length: count }, () => `${kind} ${length}`)).sort();

/** What the saw takes off each piece of a pattern when its cuts do not fit beside the pieces, mm. */
const shortened = (plan: TubeCutPlan): readonly number[] => plan.patterns.map(({ pieces }) =>
  Math.max(0, (sum(pieces.map((piece) => piece.length)) + plan.kerf * (pieces.length - 1) - plan.stock) / pieces.length));

const anyNeeds: fc.Arbitrary<readonly TubeNeed[]> = fc.array(fc.record({
  kind: fc.constantFrom('post', 'long-tube', 'short-tube'),
  length: fc.integer({ min: 150, max: 2000 }),
  count: fc.integer({ min: 1, max: 6 }),
}), { minLength: 1, maxLength: 6 });

const anyStock = fc.record({ kerf: fc.integer({ min: 0, max: 4 }), endPlay: fc.integer({ min: 0, max: 4 }) });

describe('the standard rack', () => {
  const plan = planTubes(standard);

  it('leaves nothing over: plain halves and quarters of a tube (common practice, no source)', () => {
    expect(plan.patterns.map((pattern) => pattern.offCut)).toEqual(plan.patterns.map(() => 0));
    for (const { pieces } of plan.patterns) expect(sum(pieces.map((piece) => piece.length))).toBe(2000);
  });

  it('uses nine stock tubes, and fewer would be less tube than its pieces are long', () => {
    expect(plan.tubesUsed).toBe(9);
    expect(plan.fewest).toBe(9);
    expect(4 * 1500 + 8 * 1000 + 8 * 500).toBe(9 * 2000);
  });

  it('saws a post with a short tube, two long tubes, four short tubes', () => {
    expect(plan.patterns.map(({ count, pieces }) => `${count} × ${pieces.map((piece) => piece.length).join('+')}`))
      .toEqual(['4 × 1500+500', '4 × 1000+1000', '1 × 500+500+500+500']);
  });

  it('shares three cuts of 1 mm among four pieces: 0.75 mm each, within the joints\' end play', () => {
    expect(plan.shortest).toBeCloseTo(0.75, 12);
    expect(plan.shortest).toBeLessThanOrEqual(standard.kit.joint.endPlay);
  });
});

describe.each(sizes)('the rack, size %s', (size) => {
  const model = rackModel(size);
  const plan = planTubes(model);

  it('gets every tube that its model has, and no other', () => {
    expect(sawn(plan)).toEqual(wanted(model.tubes));
    const inModel = model.parts.flatMap((part) => (part.shape.form === 'tube' ? [`${part.kind} ${part.shape.length}`] : []));
    expect(sawn(plan)).toEqual(inModel.sort());
  });

  it('counts its stock tubes', () => {
    expect(sum(plan.patterns.map((pattern) => pattern.count))).toBe(plan.tubesUsed);
    expect(plan.tubesUsed).toBeGreaterThanOrEqual(plan.fewest);
  });
});

describe('any tubes from any stock', () => {
  it('never take more out of a stock tube than it is long, and lose no piece', () => {
    fc.assert(fc.property(anyNeeds, anyStock, (tubes, stock) => {
      const plan = planTubes(asking(tubes, stock));
      expect(sawn(plan)).toEqual(wanted(tubes));
      expect(sum(plan.patterns.map((pattern) => pattern.count))).toBe(plan.tubesUsed);
      for (const { pieces, offCut } of plan.patterns) {
        expect(sum(pieces.map((piece) => piece.length)) + offCut).toBeLessThanOrEqual(2000);
        expect(pieces.length).toBeGreaterThan(0);
        expect(offCut).toBeGreaterThanOrEqual(0);
      }
    }));
  });

  it('come out no shorter than the end play allows, and the plan says by how much', () => {
    fc.assert(fc.property(anyNeeds, anyStock, (tubes, stock) => {
      const plan = planTubes(asking(tubes, stock));
      expect(Math.max(0, ...shortened(plan))).toBeLessThanOrEqual(stock.endPlay);
      expect(plan.shortest).toBeCloseTo(Math.max(0, ...shortened(plan)), 12);
    }));
  });

  it('an off-cut is what is left after a cut for every piece', () => {
    fc.assert(fc.property(anyNeeds, anyStock, (tubes, stock) => {
      const plan = planTubes(asking(tubes, stock));
      for (const { pieces, offCut } of plan.patterns) {
        expect(offCut).toBe(Math.max(0, 2000 - sum(pieces.map((piece) => piece.length + stock.kerf))));
      }
    }));
  });

  it('are sawn longest first, each pattern written once, whatever the order of the needs', () => {
    fc.assert(fc.property(anyNeeds, (tubes) => {
      const plan = planTubes(asking(tubes));
      for (const { pieces } of plan.patterns) {
        const lengths = pieces.map((piece) => piece.length);
        expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
      }
      const written = plan.patterns.map(({ pieces }) => JSON.stringify(pieces));
      expect(new Set(written).size).toBe(written.length);
      expect(planTubes(asking([...tubes].reverse()))).toEqual(plan);
    }));
  });

  it('tell as the fewest what their bare lengths would fill, whatever the saw takes', () => {
    fc.assert(fc.property(anyNeeds, anyStock, (tubes, stock) => {
      const filled = Math.ceil(sum(tubes.map(({ length, count }) => length * count)) / 2000);
      const plan = planTubes(asking(tubes, stock));
      expect(plan.fewest).toBe(filled);
      expect(plan.tubesUsed).toBeGreaterThanOrEqual(filled);
    }));
  });
});

describe('a saw whose cuts do not fit', () => {
  const halves: readonly TubeNeed[] = [{ kind: 'long-tube', length: 1000, count: 2 }];

  it('makes two halves of one tube as long as the joints have play for half a cut each', () => {
    expect(planTubes(asking(halves, { kerf: 4, endPlay: 2 })).tubesUsed).toBe(1);
    expect(planTubes(asking(halves, { kerf: 4, endPlay: 2 })).shortest).toBe(2);
  });

  it('takes a second tube when the halves would come out too short', () => {
    expect(planTubes(asking(halves, { kerf: 5, endPlay: 2 })).tubesUsed).toBe(2);
    expect(planTubes(asking(halves, { kerf: 1, endPlay: 0 })).tubesUsed).toBe(2);
  });

  it('takes a whole stock tube as it is', () => {
    const plan = planTubes(asking([{ kind: 'post', length: 2000, count: 4 }], { kerf: 3, endPlay: 0 }));
    expect([plan.tubesUsed, plan.shortest, plan.patterns[0]?.offCut]).toEqual([4, 0, 0]);
  });
});

describe('a piece longer than the stock', () => {
  it('is refused, told by kind, length and stock', () => {
    const model = asking([{ kind: 'post', length: 2001, count: 1 }, { kind: 'short-tube', length: 500, count: 2 }]);
    expect(() => planTubes(model)).toThrow(new RangeError('a post of 2001 mm is longer than the stock tube of 2000 mm'));
  });
});
