import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkModel, defaultLimits, findingNames, findingText } from '../../src/check/index.ts';
import { judge } from '../../src/check/judge.ts';
import { namesWith, reportOf } from './finding.ts';
import { forAdults } from './items.ts';
import { rack } from './rack.ts';

const racks = fc.record({
  width: fc.integer({ min: 400, max: 1400 }), depth: fc.integer({ min: 250, max: 900 }),
  height: fc.integer({ min: 500, max: 2200 }), decks: fc.integer({ min: 2, max: 5 }),
});

describe('a finding', () => {
  it('passes exactly when its margin is at least 1, for every finding of every rack', () => {
    fc.assert(fc.property(racks, (size) => {
      for (const finding of reportOf(rack(size)).findings) {
        expect(finding.verdict === 'pass').toBe(finding.margin >= 1);
        expect(Number.isFinite(finding.figure) && Number.isFinite(finding.margin)).toBe(true);
        expect(finding.parts.length).toBeGreaterThan(0);
        expect(finding.source).not.toBe('');
      }
    }), { numRuns: 25 });
  });

  it('has the margin of limit over figure, or figure over limit', () => {
    const measured = { name: 'sway', unit: 'mm', source: 'test', parts: [] } as const;
    fc.assert(fc.property(fc.integer({ min: 1, max: 10_000 }), fc.integer({ min: 1, max: 10_000 }), (figure, limit) => {
      expect(judge({ ...measured, figure, limit, bound: 'most' }).verdict).toBe(figure <= limit ? 'pass' : 'fail');
      expect(judge({ ...measured, figure, limit, bound: 'least' }).verdict).toBe(figure >= limit ? 'pass' : 'fail');
    }));
  });

  it('passes where figure and limit differ by the noise of a sum only', () => {
    expect(judge({ name: 'sway', unit: 'rad', source: 'test', parts: [], figure: 0.1 + 0.2, limit: 0.3, bound: 'most' })).toMatchObject({ verdict: 'pass', margin: 1 });
  });

  it('keeps an empty figure finite', () => {
    expect(judge({ name: 'sway', unit: 'N', source: 'test', parts: [], figure: 0, limit: 5, bound: 'most' }).margin).toBe(1000);
  });
});

describe('a report', () => {
  it('is the same bytes each time', () => {
    expect(JSON.stringify(reportOf(rack()))).toBe(JSON.stringify(reportOf(rack())));
  });

  it('does not hang on the order of the parts but for the order of their names', () => {
    const model = rack();
    const turned = reportOf({ ...model, parts: [...model.parts].reverse() });
    const straight = reportOf(model);
    expect(turned.advice).toEqual(straight.advice);
    expect(turned.findings.map(({ figure }) => figure)).toEqual(straight.findings.map(({ figure }) => figure));
  });

  it('tells its findings in the order of the names', () => {
    const names = [...new Set(reportOf(rack()).findings.map((finding) => finding.name))];
    expect(names).toEqual(findingNames.filter((name) => names.includes(name)));
  });

  it('names a source with its tag, or says whose default or practice it is, for every limit', () => {
    for (const limit of Object.values(defaultLimits)) {
      expect(limit.source).toMatch(/\((R|R2|C|M)(, \w+)?\)|our default|common practice, no source/);
    }
  });
});

describe('advice against tipping', () => {
  it('anything taller than 600 mm is fixed to a wall, and only cautions say so', () => {
    expect(reportOf(rack()).advice.wall).toBe('masonry');
    expect(namesWith(rack(), 'caution')).toEqual(['joint-test', 'wall-height', 'tip-test', 'tip-scope', 'tip-empty', 'tip-loaded', 'snag-point', 'local-codes']);
    expect(namesWith(rack(), 'fail')).toEqual([]);
  });

  it('on a wall of boards supports no load, and nothing fails: the step that says so is printed', () => {
    const report = checkModel(rack(), { ...forAdults, wall: 'board' });
    expect([report.advice.wall, report.advice.safeLoadPerDeck]).toEqual(['board', null]);
    expect(report.findings.filter(({ name }) => name === 'wall-hold').map(({ verdict, margin }) => [verdict, margin])).toEqual([['caution', 0]]);
    expect(report.findings.some(({ verdict }) => verdict === 'fail')).toBe(false);
  });

  it('the tall rack is also too slender for its depth', () => {
    expect(namesWith(rack({ height: 2000, depth: 450 }), 'caution')).toContain('slenderness');
  });

  it('tells the force that tips the empty rack most easily, backwards: weight times 270 mm less a bit over 1500 mm', () => {
    const model = rack();
    const weight = model.parts.reduce((sum, part) => sum + part.mass, 0) * 9.80665;
    expect(reportOf(model).advice.tippingForce).toBeCloseTo((weight * 268.7) / 1500, 0);
  });

  it('a deeper rack is harder to tip', () => {
    expect(reportOf(rack({ depth: 600 })).advice.tippingForce).toBeGreaterThan(reportOf(rack({ depth: 400 })).advice.tippingForce);
  });
});

describe('findingText', () => {
  it('is one line with verdict, figures, units, margin, source and the first parts', () => {
    const [finding] = reportOf(rack({ width: 1300 })).findings;
    if (!finding) throw new Error('no finding');
    expect(findingText(finding)).toBe(
      'fail    stock-panel: 1687 mm, at most 1500 mm, margin 0.889 [panel of stall-kit as delivered, either way round] deck-1/panel, deck-2/panel, deck-3/panel, deck-4/panel');
  });

  it('tells angles in degrees and counts without a unit, and cuts long lists of parts', () => {
    const texts = reportOf(rack()).findings.map(findingText);
    expect(texts.find((text) => text.includes('crease-angle'))).toContain('45°, at most 45°');
    expect(texts.find((text) => text.includes('bracing'))).toContain('bracing: 3, at least 3, margin 1 ');
    expect(texts.find((text) => text.includes('pin-length'))).toMatch(/deck-1\/panel-pin-left-1, .* and \d+ more$/);
  });
});
