// Seats, tables and beds: what each use asks, and what stops it. Hand figures are reckoned beside the room (C).
import { beforeAll, describe, expect, it } from 'vitest';
import { defaultLimits, findingNames, type Finding, type Report } from '../../src/check/index.ts';
import { buildModel, type Model } from '../../src/model/index.ts';
import type { Kit } from '../../src/read/index.ts';
import { changed, itemNamed, modelOf, variants, type ItemName } from './items.ts';
import { reportOf } from './finding.ts';
import { structureReports } from './structure-reports.ts';
import { structureNames } from '../support/structures.ts';

const G = 9.80665;

const found = ({ findings }: Report, name: string): Finding => {
  const finding = findings.find((each) => each.name === name);
  if (!finding) throw new Error(`no finding ${name}`);
  return finding;
};

const of = (model: Model, name: string): Finding => found(reportOf(model), name);

const panel = (changes: Partial<Kit['panel']>) => (kit: Kit): Kit => ({ ...kit, panel: { ...kit.panel, ...changes } });
const tube = (changes: Partial<Kit['tube']>) => (kit: Kit): Kit => ({ ...kit, tube: { ...kit.tube, ...changes } });
const strong = panel({ skinModulus: 70_000, skinStrength: 300, coreShearModulus: 100, coreShearStrength: 5 });

const near = (figure: number, hand: number, share = 2e-3): void => { expect(Math.abs(figure / hand - 1)).toBeLessThan(share); };

describe('the findings of all items together', () => {
  it('are all the names there are, each item in their order', () => {
    const structures = structureNames.flatMap((name) => structureReports(name));
    const told = [...variants.map(([name, size]) => reportOf(modelOf(name, size))), ...structures].map(({ findings }) => findings.map((finding) => finding.name));
    for (const names of told) {
      const once = [...new Set(names)];
      expect(once).toEqual(findingNames.filter((name) => once.includes(name)));
    }
    expect(new Set(told.flat())).toEqual(new Set(findingNames));
  });
});

describe('the load of the use', () => {
  it.each<readonly [ItemName, string, number]>([
    ['stool', 'low', 1300], ['chair', 'mark-6', 1300], ['chair', 'mark-2', 1300], ['desk', 'mark-4', 300], ['bed', 'toddler', 450],
  ])('%s %s is tested with %d N', (name, size, load) => {
    const finding = of(modelOf(name, size), 'use-load');
    expect(finding).toMatchObject({ limit: load, unit: 'N', bound: 'least' });
  });

  it('does not hang on what a size is called, nor on how high the seat is', () => {
    const chair = itemNamed('chair');
    const [mark2] = chair.sizes;
    const renamed = buildModel({ ...chair, sizes: [{ name: 'lounge', values: mark2?.values ?? {} }] }, 'lounge');
    expect(of(renamed, 'use-load').limit).toBe(1300);
    expect(of(renamed, 'local-codes').verdict).toBe('caution');
    expect(of(changed('chair', 'mark-4', { seat_height: 300 }), 'use-load').limit).toBe(1300);
  });

  it('when it passes, the load of the use is promised: the test load over the impact, three quarters of it with untested joints, in whole 10 N', () => {
    const tested = (kit: Kit): Kit => ({ ...strong(kit), jointTest: { load: 3000, slip: 1 } });
    expect(reportOf(changed('stool', 'standard', {}, strong)).advice).toMatchObject({ safeLoadPerDeck: 750, untestedJoint: true });
    expect(reportOf(changed('stool', 'standard', {}, tested)).advice).toMatchObject({ safeLoadPerDeck: 1000, untestedJoint: false });
    expect(reportOf(changed('desk', 'mark-4', {}, tested)).advice.safeLoadPerDeck).toBe(250);
    expect(reportOf(changed('bed', 'nap', {}, tested)).advice.safeLoadPerDeck).toBe(220);
  });

  it('when the panel is too soft, the sag at the test load says so and nothing is promised', () => {
    const report = reportOf(changed('stool', 'standard', {}, panel({ skinModulus: 300 })));
    expect(found(report, 'use-load').verdict).toBe('fail');
    expect(found(report, 'panel-sag').verdict).toBe('fail');
    expect(report.advice.safeLoadPerDeck).toBeNull();
  });

  it('its largest safe load passes every load check, as a test load of that size shows', () => {
    const model = changed('chair', 'mark-6', {}, strong);
    const { figure } = of(model, 'use-load');
    const limits = { ...defaultLimits, seatTest: { ...defaultLimits.seatTest, value: figure } };
    expect(found(reportOf(model, limits), 'use-load').verdict).toBe('pass');
  });
});

describe('a chair of mark 6 under its test load', () => {
  let report: Report;
  beforeAll(() => { report = reportOf(changed('chair', 'mark-6', {}, strong)); });

  it('backrest tube: 227.5 N on 437 of 585 mm over a drilled tube', () => {
    const drilled = ((Math.PI / 64) * (28 ** 4 - 22 ** 4) - 2 * 6 * 3 * 12.5 ** 2) / 14;
    near(found(report, 'backrest-tube').figure, (227.5 * (585 / 4 - 437 / 8)) / drilled);
    expect(found(report, 'backrest-tube').parts).toEqual(['back-rail-1/long-tube-back', 'back-rail-2/long-tube-back']);
  });

  it('posts: no less than two cantilevers from the seat would bend', () => {
    const drilled = ((Math.PI / 64) * (28 ** 4 - 22 ** 4) - 2 * 6 * 3 * 12.5 ** 2) / 14;
    const levels = modelOf('chair', 'mark-6').groups.map(({ level }) => level).toSorted((a, b) => a - b);
    const [, seat = 0, low = 0, high = 0] = levels;
    const cantilever = (113.75 * (low - seat) + 113.75 * (high - seat)) / drilled;
    expect(found(report, 'post-bending').figure).toBeGreaterThanOrEqual(0.999 * cantilever);
    expect(found(report, 'post-bending').figure).toBeLessThan(1.2 * cantilever);
  });

  it('is not told to be fixed to a wall, and needs no storage test', () => {
    expect(report.advice.wall).toBeNull();
    expect(report.findings.some(({ name }) => name === 'wall-height' || name === 'tip-test' || name === 'tip-scope')).toBe(false);
  });

  it.each([
    ['backrest-tube', tube({ bendingStrength: 10 })], ['post-bending', tube({ bendingStrength: 40 })], ['backrest-panel', panel({ skinStrength: 3 })],
  ] as const)('%s fails for a kit too weak for it', (name, weaker) => {
    expect(of(changed('chair', 'mark-6', {}, weaker), name).verdict).toBe('fail');
  });
});

describe('flat panels', () => {
  it('are cut from an off-cut beside the blank where one is large enough, else from a panel as delivered', () => {
    expect(of(modelOf('chair', 'mark-6'), 'stock-plate').source).toContain('off-cut');
    const toddler = reportOf(modelOf('bed', 'toddler')).findings.filter(({ name }) => name === 'stock-plate');
    expect(toddler[0]).toMatchObject({ verdict: 'pass', figure: 792, limit: 1500 });
    expect(toddler[0]?.source).toContain('as delivered');
  });

  it('larger than any stock fail and are named', () => {
    const finding = of(changed('bed', 'toddler', {}, panel({ length: 700, width: 600 })), 'stock-plate');
    expect(finding).toMatchObject({ verdict: 'fail', figure: 792, limit: 700, parts: ['guard-panel-front', 'guard-panel-back'] });
  });

  it('stiffen a bed without cables; without them it gives way and bracing fails', () => {
    const bed = modelOf('bed', 'toddler');
    const bare = { ...bed, parts: bed.parts.filter(({ kind }) => kind !== 'flat-panel') };
    expect(of(bed, 'bracing')).toMatchObject({ verdict: 'pass', figure: 4 });
    expect(of(bare, 'bracing')).toMatchObject({ verdict: 'fail', figure: 0 });
    expect(reportOf(bare).findings.some(({ name }) => name === 'sway')).toBe(false);
  });

  it('softer ones let it sway further', () => {
    const soft = changed('bed', 'toddler', {}, panel({ skinModulus: 20 }));
    expect(of(soft, 'sway').figure).toBeGreaterThan(of(modelOf('bed', 'toddler'), 'sway').figure);
  });
});

describe('children’s furniture', () => {
  it('and all other says that local codes rule, and that nobody has tested its joints, however it is told', () => {
    for (const { findings } of [...variants.map(([name, size]) => reportOf(modelOf(name, size))), ...structureNames.flatMap((name) => structureReports(name))]) {
      const told = (wanted: string) => findings.filter(({ name }) => name === wanted).map(({ verdict, figure }) => [verdict, figure]);
      expect([told('local-codes'), told('joint-test')]).toEqual([[['caution', 0]], [['caution', 0]]]);
      expect(findings.some(({ name }) => name === 'snag-point')).toBe(true);
    }
  });

  it('that children do not reach is told of what stands out by our own word of care', () => {
    const [rackSnag, bedSnag] = [of(modelOf('rack', 'low'), 'snag-point'), of(modelOf('bed', 'nap'), 'snag-point')];
    expect(rackSnag).toMatchObject({ verdict: 'caution', limit: bedSnag.limit });
    expect([rackSnag.source, bedSnag.source].map((source) => source.startsWith('our default'))).toEqual([true, false]);
  });

  it('limits that are known from memory only never fail', () => {
    for (const [name, size] of variants) {
      for (const { source, verdict } of reportOf(modelOf(name, size)).findings) {
        if (/^(EN|16|wedge|between)[^;]*\(M\)/.test(source)) expect(verdict).not.toBe('fail');
      }
    }
  });

  it('weight of a light chair: the push at its top that tips it backwards is m g b / h', () => {
    const model = modelOf('chair', 'mark-2');
    const weight = model.parts.reduce((sum, part) => sum + part.mass, 0) * G;
    const height = Math.max(...model.parts.flatMap(({ kind, shape }) => (kind === 'post' && shape.form === 'tube' ? [shape.length] : [])));
    const back = model.parts.reduce((sum, { mass, pose }) => sum + mass * (pose[13] ?? NaN), 0) / (weight / G);
    near(of(model, 'tip-empty').figure, (weight * (162.5 - back)) / height, 0.02);
  });
});
