import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultLimits } from '../../src/check/index.ts';
import { caseOf } from '../../src/check/case.ts';
import { lineLoadDeflection } from '../../src/check/formulas/beam.ts';
import { loadChecks } from '../../src/check/load/index.ts';
import { safeLoadOf, type SafeLoad } from '../../src/check/load/safe-load.ts';
import type { Case, Finding } from '../../src/check/types.ts';
import type { Model } from '../../src/model/index.ts';
import type { Kit } from '../../src/read/index.ts';
import { findingOf, namesWith, reportOf } from './finding.ts';
import { rack, stallKit } from './rack.ts';
import { forAdults } from './items.ts';

const found = (given: Case): readonly Finding[] => loadChecks.flatMap((check) => check(given));

const at = (model: Model, load: number): readonly Finding[] =>
  found(caseOf(model, forAdults, defaultLimits, load));

const passes = (model: Model, load: number): boolean => at(model, load).every((finding) => finding.verdict !== 'fail');

const safeOf = (model: Model): SafeLoad => safeLoadOf(caseOf(model, forAdults, defaultLimits, 0));

const safe = (model: Model): number => safeOf(model).load ?? 0;

const few = { numRuns: 25 };

describe('beams', () => {
  it('doubling a span multiplies the deflection under a line load by 16', () => {
    fc.assert(fc.property(
      fc.double({ min: 0.01, max: 5, noNaN: true }), fc.integer({ min: 100, max: 3000 }), fc.integer({ min: 1000, max: 50_000 }),
      (load, span, second) => {
        const ratio = lineLoadDeflection(load, 2 * span, 17_000, second) / lineLoadDeflection(load, span, 17_000, second);
        expect(ratio).toBeCloseTo(16, 9);
      },
    ));
  });
});

describe('the safe load', () => {
  const racks = fc.record({
    width: fc.integer({ min: 500, max: 1100 }), depth: fc.integer({ min: 300, max: 600 }),
    height: fc.integer({ min: 1000, max: 2000 }), decks: fc.integer({ min: 2, max: 5 }),
  });

  it('passes at its value and has no twentieth in hand one step further, unless the cap comes first', () => {
    fc.assert(fc.property(racks, (size) => {
      const model = rack(size);
      const { load, governedBy } = safeOf(model);
      if (load === null) return;
      expect(load % 10).toBe(0);
      expect(passes(model, load)).toBe(true);
      if (governedBy === null) expect(load).toBe(600);
      else expect(at(model, load + 10).find((finding) => finding.name === governedBy)?.margin).toBeLessThan(1.05);
    }), few);
  });

  it('never grows with the depth or the height, unless the cables decide: those pull better on a wider slope', () => {
    const wide = racks.map((size) => ({ ...size, width: Math.max(800, size.width) }));
    fc.assert(fc.property(wide, fc.integer({ min: 10, max: 200 }), (size, more) => {
      const { load, governedBy } = safeOf(rack(size));
      fc.pre(governedBy !== 'sway' && governedBy !== 'cable-pull');
      expect(safe(rack({ ...size, depth: size.depth + more }))).toBeLessThanOrEqual(load ?? 0);
      expect(safe(rack({ ...size, height: size.height + more }))).toBeLessThanOrEqual(load ?? 0);
    }), few);
  });

  it('falls when the tubes, which decide here, span further', () => {
    const kit: Kit = { ...stallKit, panel: { ...stallKit.panel, skinModulus: 70_000 } };
    const model = rack({ width: 600, height: 1000, decks: 2, kit });
    const wider = rack({ width: 1100, height: 1000, decks: 2, kit });
    expect(safeOf(wider).governedBy).toBe('tube-deflection');
    expect(safe(wider)).toBeLessThan(safe(model));
  });

  it('is null under the least load worth a promise, and the findings are told at the nominal load', () => {
    const kit: Kit = { ...stallKit, tube: { ...stallKit.tube, modulus: 500 } };
    const report = reportOf(rack({ kit }));
    expect(report.advice.safeLoadPerDeck).toBeNull();
    expect(report.findings.find((finding) => finding.name === 'tube-deflection')?.verdict).toBe('fail');
  });

  it('is null when something cannot be built, however strong it is', () => {
    expect(reportOf(rack({ height: 2001, decks: 2, width: 600 })).advice.safeLoadPerDeck).toBeNull();
  });

  it('stops at the cap for a very strong kit', () => {
    const kit: Kit = {
      ...stallKit, panel: { ...stallKit.panel, skinModulus: 70_000, skinStrength: 100 }, tube: { ...stallKit.tube, modulus: 200_000, bearingStrength: 1000, bendingStrength: 1000 },
    };
    expect(reportOf(rack({ kit, decks: 2, height: 800 })).advice).toMatchObject({ safeLoadPerDeck: 450, governedBy: null, untestedJoint: true });
  });

  it('obeys changed limits', () => {
    const limits = { ...defaultLimits, loadCap: { ...defaultLimits.loadCap, value: 120 } };
    const kit: Kit = { ...stallKit, panel: { ...stallKit.panel, skinModulus: 70_000, skinStrength: 100 }, tube: { ...stallKit.tube, modulus: 200_000, bearingStrength: 1000 } };
    expect(reportOf(rack({ kit, decks: 2, height: 800 }), limits).advice.safeLoadPerDeck).toBe(90);
  });
});

describe('load findings', () => {
  it('never get better as the load grows', () => {
    const given = caseOf(rack(), forAdults, defaultLimits, 0);
    fc.assert(fc.property(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 1, max: 100 }), (load, more) => {
      const heavier = found({ ...given, load: load + more });
      found({ ...given, load }).forEach((finding, index) => {
        expect(heavier[index]?.margin ?? 0).toBeLessThanOrEqual(finding.margin);
      });
    }), few);
  });

  it.each([
    ['tube-bending', { tube: { ...stallKit.tube, bendingStrength: 5 } }, 'deck-1/long-tube-front'],
    ['tube-deflection', { tube: { ...stallKit.tube, modulus: 2000 } }, 'deck-1/long-tube-front'],
    ['panel-sag', { panel: { ...stallKit.panel, skinModulus: 100 } }, 'deck-1/panel'],
    ['panel-skin', { panel: { ...stallKit.panel, skinStrength: 1 } }, 'deck-1/panel'],
    ['panel-core', { panel: { ...stallKit.panel, coreShearStrength: 0.01 } }, 'deck-1/panel'],
    ['post-buckling', { tube: { ...stallKit.tube, modulus: 2000 } }, 'post-left-front'],
    ['pin-shear', { jointPin: { ...stallKit.jointPin, strength: 1 } }, 'joint-pin-left-front-1'],
    ['pin-bearing', { tube: { ...stallKit.tube, bearingStrength: 2 } }, 'post-left-front'],
    ['sway', { cable: { ...stallKit.cable, stiffness: 3000 } }, 'cable-back-1'],
    ['cable-pull', { cable: { ...stallKit.cable, strength: 50 } }, 'cable-back-1'],
  ] as const)('%s fails for a kit too weak for it and names what is weak', (name, weak, part) => {
    const finding = findingOf(rack({ kit: { ...stallKit, ...weak } }), name);
    expect(finding.verdict).toBe('fail');
    expect(finding.margin).toBeLessThan(1);
    expect(finding.parts).toContain(part);
  });

  it('a deck deeper than it is wide is borne by its short tubes', () => {
    expect(findingOf(rack({ width: 500, depth: 600 }), 'tube-bending').parts).toContain('deck-1/short-tube-left');
  });
});

describe('bracing', () => {
  it('two faces are not enough, and sway is then not worked out', () => {
    const model = rack({ faces: ['left', 'right'] });
    expect(findingOf(model, 'bracing')).toMatchObject({ verdict: 'fail', figure: 2, limit: 3 });
    expect(reportOf(model).findings.some((finding) => finding.name === 'sway')).toBe(false);
  });

  it('without cables the posts are to blame', () => {
    const finding = findingOf(rack({ faces: [] }), 'bracing');
    expect(finding).toMatchObject({ verdict: 'fail', figure: 0 });
    expect(finding.parts).toContain('post-right-back');
  });

  it('a face with one cable of the cross missing does not count', () => {
    const model = rack();
    const parts = model.parts.filter((part) => part.id !== 'cable-left-2');
    expect(findingOf({ ...model, parts }, 'bracing')).toMatchObject({ verdict: 'fail', figure: 2 });
  });

  it('cables that stop under the top deck leave it loose', () => {
    const model = rack();
    const short = rack({ height: 1100, decks: 3 });
    const parts = [...model.parts.filter((part) => part.kind !== 'cable'), ...short.parts.filter((part) => part.kind === 'cable')];
    expect(namesWith({ ...model, parts }, 'fail')).toContain('bracing');
  });

  it('a fourth face makes it stiffer', () => {
    expect(findingOf(rack({ faces: ['front', 'back', 'left', 'right'] }), 'sway').figure)
      .toBeLessThan(findingOf(rack(), 'sway').figure);
  });
});
