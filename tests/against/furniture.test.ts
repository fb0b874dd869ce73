// EN 1022 (R2, backward M), EN 747-1 (R), 16 CFR 1213/1513 (R), EN 716 (M), ASTM F2057-23 scope (R), GB/T 10357.4 (R): their numbers, and where the items stand by them.
import { describe, expect, it } from 'vitest';
import { checkModel, defaultLimits, type Finding } from '../../src/check/index.ts';
import type { Model } from '../../src/model/index.ts';
import { changed, declaredOf, modelOf, variants } from '../check/items.ts';
import { rack } from '../check/rack.ts';
import { reportOf } from '../check/finding.ts';

const G = 9.80665;

const all = (model: Model, name: string): readonly Finding[] => reportOf(model).findings.filter((finding) => finding.name === name);

function only(model: Model, name: string): Finding {
  const [finding] = all(model, name);
  if (!finding) throw new Error(`no finding ${name}`);
  return finding;
}

describe('EN 1022, stability of chairs', () => {
  it('600 N down 60 mm inside the edge with 20 N sideways (R2)', () => {
    expect([defaultLimits.edgeLoad.value, defaultLimits.edgeInset.value, defaultLimits.edgePush.value]).toEqual([600, 60, 20]);
  });

  it('stool high about its posts: the edge stands 23.5 mm out, so the load 36.5 mm in; weight × 242.5 mm more; 20 N at 600 mm against it (C)', () => {
    const model = modelOf('stool', 'high');
    const finding = only(model, 'tip-edge');
    const weight = model.parts.reduce((sum, part) => sum + part.mass, 0) * G;
    expect(finding.limit).toBeCloseTo(12, 9);
    expect(Math.abs(finding.figure / ((weight * 242.5 + 600 * 36.5) / 1000) - 1)).toBeLessThan(0.02);
    expect(finding.verdict).toBe('pass');
  });

  it('backwards 80 N from a seat of 720 mm, below it 0.2857 (1000 − H) N: both agree at 720 mm (M)', () => {
    const { backPushSlope, backPushZero, backPushSeat, backPushHigh } = defaultLimits;
    expect(backPushSlope.value * (backPushZero.value - backPushSeat.value)).toBeCloseTo(backPushHigh.value, 1);
  });

  it('chair of mark 6 leaning back: 154.3 N at the backrest’s top tube, 745 mm up (C)', () => {
    const model = modelOf('chair', 'mark-6');
    const top = Math.max(...model.groups.map(({ level }) => level));
    expect(only(model, 'tip-back').limit).toBeCloseTo((0.2857 * 540 * top) / 1000, 2);
  });

  it('every chair and stool passes where the value was read (R2)', () => {
    for (const [name, size] of variants.filter(([each]) => each === 'chair' || each === 'stool')) {
      expect(only(modelOf(name, size), 'tip-edge').verdict).toBe('pass');
    }
  });
});

describe('EN 747-1, gaps (R)', () => {
  it('no gap that a finger reaches lies between 7 and 12 mm, on any bed, chair or desk as delivered', () => {
    for (const [name, size] of variants.filter(([each]) => each === 'bed' || each === 'chair' || each === 'desk')) {
      expect(all(modelOf(name, size), 'finger-gap').every(({ verdict }) => verdict === 'pass')).toBe(true);
    }
  });

  it('sockets 9 mm short of a guard’s panel are refused', () => {
    const bed = changed('bed', 'toddler', {}, (kit) => ({ ...kit, practice: { ...kit.practice, notchGap: 9 } }));
    expect(only(bed, 'finger-gap')).toMatchObject({ verdict: 'fail', figure: 9, limit: 7, bound: 'most' });
  });

  it('a mattress 20 mm shorter than the long tubes, pushed to one end, leaves 13.9 mm and is refused; 10 mm shorter 3.9 mm (C)', () => {
    const bed = modelOf('bed', 'toddler');
    const mattress = { ...declaredOf(bed).mattress, length: 880, width: 490, thickness: 80 };
    const finding = checkModel(bed, { ...declaredOf(bed), mattress }).findings.find(({ name }) => name === 'mattress-gap');
    // Between the panels: 940 less two of half a tube, a hair and a panel.
    expect(finding?.figure).toBeCloseTo(940 - 2 * (14 + 0.05 + 9) - 880, 3);
    expect(finding?.verdict).toBe('fail');
  });
});

describe('16 CFR 1213 and 1513, guards of beds', () => {
  it('a guard runs to the end structure, gap at most 5.6 mm (R)', () => {
    expect(only(modelOf('bed', 'toddler'), 'guard-end')).toMatchObject({ limit: 5.6, bound: 'most', verdict: 'pass' });
  });

  it.each(['nap', 'toddler', 'small-child'])('bed %s: guard at least 127 mm over the mattress (R2); upper tube’s middle and half a tube (C)', (size) => {
    const bed = modelOf('bed', size);
    expect(only(bed, 'guard-height')).toMatchObject({ limit: 127, verdict: 'pass' });
    expect(only(bed, 'guard-height').figure).toBeCloseTo((bed.parameters['guard']?.value ?? NaN) + 14, 6);
  });

  it('a thicker mattress under the same guard brings it below 127 mm and fails', () => {
    const bed = modelOf('bed', 'nap');
    const { findings } = checkModel(bed, { ...declaredOf(bed), mattress: { length: 790, width: 410, thickness: 110 } });
    expect(findings.find(({ name }) => name === 'guard-height')).toMatchObject({ verdict: 'fail', figure: 124 });
  });

  it('where the wedge block passes, a sphere of 230 mm must pass too (R); the openings are too narrow for the wedge (M), by hand 72.05 mm round the corner (C)', () => {
    const finding = only(modelOf('bed', 'toddler'), 'guard-opening');
    expect(finding.figure).toBeCloseTo(Math.hypot(74 - 23.05, 74 - 23.05), 2);
    expect(finding.verdict).toBe('pass');
    expect(finding.source).toContain('230 mm');
  });
});

describe('EN 716, gaps between slats 45 to 65 mm (M)', () => {
  it('wider openings are a caution, never a failure', () => {
    expect(only(modelOf('bed', 'toddler'), 'guard-slat')).toMatchObject({ verdict: 'caution', limit: 65 });
  });
});

describe('ASTM F2057-23, scope (R): from 686 mm, 13.6 kg, 90.6 dm³, all three', () => {
  const model = rack();
  const mass = model.parts.reduce((sum, part) => sum + part.mass, 0);
  const weighing = (kilograms: number): Model => ({ ...model, parts: model.parts.map((part) => ({ ...part, mass: (part.mass * kilograms) / mass })) });

  it('a rack of 13.5 kg is let off by its mass, one of 13.7 kg is in', () => {
    expect(only(weighing(13.5), 'tip-scope')).toMatchObject({ verdict: 'pass', unit: 'kg', limit: 13.6 });
    expect(only(weighing(13.7), 'tip-scope')).toMatchObject({ verdict: 'caution' });
  });

  it('a low one is let off by its height', () => {
    const low = rack({ height: 640, decks: 2, lowest: 150 });
    expect(only({ ...low, parts: low.parts.map((part) => ({ ...part, mass: part.mass * 10 })) }, 'tip-scope')).toMatchObject({ verdict: 'pass', unit: 'mm', figure: 640 });
  });
});
