// The whole item under loads at once, on the top alone and on one side: the figures by hand beside the room (C).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { caseOf } from '../../src/check/case.ts';
import { standOf, type SwayInput } from '../../src/check/frame/index.ts';
import { checkModel, defaultLimits, type Report } from '../../src/check/index.ts';
import { cornerShare, sharedByPosts } from '../../src/check/load/standings.ts';
import { overhangOf, spansOf } from '../../src/check/load/edges.ts';
import { rulesOf } from '../../src/check/rules.ts';
import { buildModel } from '../../src/model/index.ts';
import { declaredFor } from '../../src/read/index.ts';
import { structureFrom, structureText, changedText, type StructureName } from '../support/structures.ts';
import { declaredOf, modelOf } from './items.ts';
import { structureCaseOf } from './structure-reports.ts';

const G = 9.80665;
/** Tube 28 × 3: area, mm², second moment, mm⁴, modulus used, N/mm². */
const [A, I, E] = [(Math.PI / 4) * (28 ** 2 - 22 ** 2), (Math.PI / 64) * (28 ** 4 - 22 ** 4), 23_000 * 0.7];

const reportOf = (name: StructureName, size: string, text = structureText(name)): Report => {
  const item = structureFrom(name, text);
  return checkModel(buildModel(item, size), declaredFor(item, size));
};
const figureOf = ({ findings }: Report, name: string): number => findings.find((each) => each.name === name)?.figure ?? NaN;

describe('four posts that stiff decks make give way together', () => {
  const model = modelOf('rack', 'tall');
  const given = caseOf(model, declaredOf(model), defaultLimits, 100);
  const [w, d] = spansOf(given);
  const inside = rulesOf(given).padInset - overhangOf(given);
  const corners = [[-1, -1], [1, -1], [-1, 1], [1, 1]].map(([x = 0, y = 0]) => [(x * w) / 2, (y * d) / 2] as const);
  /** Shares of a box at the corner −, −, by statics. */
  const shares = corners.map(([x, y]) => (x < 0 ? 1 - inside / w : inside / w) * (y < 0 ? 1 - inside / d : inside / d));
  /** Σ Pᵢ uᵢ² / Σ uᵢ² where the deck shifts by x, y and turns by t about its middle. */
  const quotient = (x: number, y: number, t: number): number => {
    const moves = corners.map(([cx, cy]) => (x - t * cy) ** 2 + (y + t * cx) ** 2);
    return moves.reduce((sum, move, index) => sum + move * (shares[index] ?? 0), 0) / moves.reduce((sum, move) => sum + move, 0);
  };

  it('no shift and turn asks more of a post than the share that is reckoned with, and one asks just that (Rayleigh’s quotient)', () => {
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    const share = sharedByPosts(given);
    const way = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(fc.property(way, way, fc.double({ min: 1e-5, max: 0.01, noNaN: true }), (x, y, t) => { expect(quotient(x, y, t)).toBeLessThanOrEqual(share + 1e-9); }));
    // Turned about the far side of the middle: the shift of the middle is r times the turn, square to the load’s way off.
    const [ex, ey] = [w / 2 - inside, d / 2 - inside];
    const r = Math.hypot(w, d) / 2;
    expect(quotient((r * ey) / Math.hypot(ex, ey), (-r * ex) / Math.hypot(ex, ey), 1)).toBeCloseTo(share, 9);
    expect(share).toBeGreaterThan(defaultLimits.cornerShare.value);
    expect(share).toBeLessThan(cornerShare(given));
  });
});

describe('loads on one half', () => {
  const [height, width] = [1000, 500];
  const posts = [[0, 0], [width, 0], [0, width], [width, width]].map(([x = 0, y = 0]) => ({ x, y, foot: 0, top: height + 10 }));
  const sides = [[0, 1], [1, 3], [3, 2], [2, 0]] as const;
  const input: SwayInput = {
    posts, levels: [{ height, tubes: sides, stiffened: true }],
    cables: sides.flatMap(([a, b]) => [[a, b], [b, a]].map(([from = 0, to = 0]) => ({ from: { post: from, height: 0 }, to: { post: to, height } }))),
    tube: { modulus: 23_000, usedStockFactor: 0.7, area: A, second: I }, cableStiffness: 60_000, force: 1,
  };

  it('shorten the posts under them, and the taut cable lets the top go h / w as far as the post is shorter', () => {
    const lean = standOf(input)?.lean;
    // Within a hundredth: a slack cable keeps a ten-thousandth of its stiffness.
    expect(Math.abs((lean?.all.x ?? NaN) / (((0.375 * height) / (E * A)) * (height / width)) - 1)).toBeLessThan(0.01);
    expect(lean?.all.y).toBeCloseTo(lean?.all.x ?? NaN, 12);
    expect(lean?.top).toEqual(lean?.all);
  });
});

describe('an item of points and bars', () => {
  it('bows out between the levels that cables hold: all but the lowest shelves and the item on six posts, half as much again on one side', () => {
    const report = reportOf('two-bay', 'tall');
    const { model, bearings, skeleton, standing } = structureCaseOf('two-bay', 'tall');
    const own = model.parts.reduce((sum, { mass }) => sum + mass, 0) * G;
    const finding = report.findings.find(({ name }) => name === 'post-buckling');
    const levels = [...skeleton.joints.values()].map((at) => at[2]);
    expect(standing?.sockets).toBe('hinged');
    const told = 1.5 * (6 * (bearings[0]?.load ?? NaN) + own) / 6;
    expect(finding?.figure).toBeLessThanOrEqual(told);
    expect(finding?.figure).toBeGreaterThan(0.95 * told);
    expect(finding?.limit).toBeCloseTo((Math.PI ** 2 * E * I) / (Math.max(...levels) - Math.min(...levels)) ** 2 / 3, 1);
  });

  it('loads one castor with three eighths of all, and with what one load at its corner adds', () => {
    const { model, bearings } = structureCaseOf('trolley', 'small');
    const own = model.parts.reduce((sum, { mass }) => sum + mass, 0) * G;
    const [upper, lower] = [300, 10 * G];
    expect(bearings.map(({ load }) => load).toSorted((a, b) => b - a)).toEqual([upper, lower]);
    // 100 mm inside the edge, which stands 23.5 mm over the tubes, 600 and 440 mm apart.
    const corner = (1 - 76.5 / 600) * (1 - 76.5 / 440) * upper;
    expect(figureOf(reportOf('trolley', 'small'), 'castor-load')).toBeCloseTo(0.375 * (own + upper + lower) + corner - 0.375 * upper, 2);
  });

  it('promises each place its own load, and no more than its file says', () => {
    for (const size of ['small', 'standard', 'large']) {
      const { advice } = reportOf('trolley', size);
      // Three quarters of 20 and of 10 kg, for joints that nobody tested, rounded down to 10 N.
      expect(advice.loads.map(({ place, load }) => [place, load])).toEqual([['serving', 140], ['below', 70]]);
      expect(advice.safeLoadPerDeck).toBe(70);
    }
  });

  it('promises nothing where all at once break what each alone would not', () => {
    const { findings, advice } = reportOf('trolley', 'small', changedText(structureText('trolley'), 'load: 10 kg', 'load: 21 kg'));
    expect(findings.filter(({ verdict }) => verdict === 'fail').map(({ name }) => name)).toEqual(['castor-load']);
    expect([advice.loads, advice.safeLoadPerDeck]).toEqual([[], null]);
  });

  it('is looked at with all laden, with the top alone and with one side alone; the worst is told', () => {
    const leansOf = (name: StructureName) => (stands: string): number => Math.max(-1, ...structureCaseOf(name, 'standard').ladens.filter((each) => each.stands === stands).map(({ lean }) => lean));
    const [shelf, bench] = [leansOf('two-bay'), leansOf('bench')];
    expect(shelf('the top alone')).toBeGreaterThan(0);
    expect(shelf('all at once')).toBeGreaterThan(shelf('the top alone'));
    // A bench with one person at its end leans further than with two; less weight leans with it.
    expect(bench('one side alone')).toBeGreaterThan(bench('all at once'));
    expect(['two-bay', 'bench'].map((name) => reportOf(name as StructureName, 'standard').findings.find((each) => each.name === 'sway')?.source.includes('load on all at once'))).toEqual([true, true]);
  });
});
