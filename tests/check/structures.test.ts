// Items told by points, bars and panels: each figure by hand beside the room (C).
import { describe, expect, it } from 'vitest';
import { edgesOf, type Contact } from '../../src/check/structure/ground.ts';
import { checkModel, defaultLimits, type Finding, type Report } from '../../src/check/index.ts';
import { buildModel } from '../../src/model/index.ts';
import { declaredFor } from '../../src/read/index.ts';
import { changedText, structureItem, structureNames, structureText, type StructureName } from '../support/structures.ts';
import { structureCaseOf, structureReports } from './structure-reports.ts';

const G = 9.80665;
/** Tube 28 × 3: π/64 (28⁴ − 22⁴), mm⁴, and its modulus used, N/mm². */
const [I, E] = [(Math.PI / 64) * (28 ** 4 - 22 ** 4), 23_000 * 0.7];

const standard = (name: StructureName): Report => {
  const report = structureReports(name)[1];
  if (report === undefined) throw new Error('three sizes each');
  return report;
};
const of = (name: StructureName, finding: string): Finding => {
  const found = standard(name).findings.find((each) => each.name === finding);
  if (found === undefined) throw new Error(`no finding ${finding}`);
  return found;
};

describe.each(structureNames)('%s', (name) => {
  it('passes in all sizes, each finding with figure, limit, margin and source', () => {
    for (const { findings } of structureReports(name)) {
      expect(findings.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
      expect(findings.length).toBeGreaterThan(15);
      for (const { figure, limit, margin, source, parts } of findings) expect([figure, limit, margin].every(Number.isFinite) && source !== '' && parts.length > 0).toBe(true);
    }
  });

  it('says of every other check why it does not apply', () => {
    for (const { notApplied } of structureReports(name)) expect(notApplied.filter(({ because }) => because === 'nothing to measure')).toEqual([]);
  });
});

describe('the frame as it is', () => {
  it('a screen is two cantilevers from its feet’s joints: half a push each, 970 − 19 mm long', () => {
    const { standing } = structureCaseOf('screen', 'standard');
    expect(standing?.sockets).toBe('stiff');
    expect(standing?.bent.moment).toBeCloseTo((970 - 19) / 2, 3);
    // P L³ / 3 E I and what the feet give besides.
    expect(standing?.drift).toBeGreaterThan((0.5 * 951 ** 3) / (3 * E * I));
    expect(standing?.drift).toBeLessThan((0.55 * 951 ** 3) / (3 * E * I));
  });

  it('cables let a shelf and a trolley stand with hinged sockets; a bench without any along it needs them stiff', () => {
    expect(['two-bay', 'trolley', 'bench'].map((name) => structureCaseOf(name as StructureName, 'standard').standing?.sockets)).toEqual(['hinged', 'hinged', 'stiff']);
    expect(of('bench', 'bracing')).toMatchObject({ verdict: 'caution', figure: 1 });
  });

  it('a castor without a brake rolls', () => {
    expect(structureCaseOf('trolley', 'standard').contacts.map(({ rolls }) => rolls).sort()).toEqual(['braked', 'braked', 'free', 'free']);
  });
});

describe('loads by place', () => {
  it('three quarters of 1300 N on one of a bench’s long tubes, 610 mm from joint to joint', () => {
    const item = structureItem('bench');
    const unreserved = { ...defaultLimits, loadReserve: { ...defaultLimits.loadReserve, value: 1 } };
    const { findings } = checkModel(buildModel(item, 'standard'), declaredFor(item, 'standard'), unreserved);
    expect(findings.find((each) => each.name === 'tube-deflection')?.figure).toBeCloseTo((5 * 0.75 * 1300 * 610 ** 3) / (384 * E * I), 2);
  });

  it('30 kg on each shelf: its middle posts bear two bays at once', () => {
    const [one, both] = [['two-bay', 'standard'], ['two-bay', 'low']].map(([name, size]) => structureCaseOf(name as StructureName, size ?? '').bearings.map(({ load }) => load));
    expect(new Set([...(one ?? []), ...(both ?? [])].map((load) => load.toFixed(4)))).toEqual(new Set([(30 * G).toFixed(4)]));
    // 0.375 of 294.2 N and of its panel, and 0.375 of the neighbour's: over 1.5 in the test of a joint.
    expect(of('two-bay', 'joint-test').limit).toBeGreaterThan(1.5 * 2 * 0.375 * 30 * G);
  });

  it('a place that says nothing of its load is tested by its use alone', () => {
    expect(structureCaseOf('chest', 'standard').bearings.map(({ place: { use }, load }) => [use, load])).toEqual([['box', 15 * G], ['lid', 600]]);
  });
});

describe('tipping', () => {
  it('over four sides of a square, whichever way the points come', () => {
    const at = (x: number, y: number): Contact => ({ bar: '', at: 0, place: [x, y, 0], low: 0, trail: 0, rolls: 'fixed' });
    expect(edgesOf([at(0, 0), at(2, 2), at(2, 0), at(1, 0), at(0, 2)]).map(({ out }) => out.map(Math.round).join())).toEqual(['0,-1', '1,0', '0,1', '-1,0']);
    expect(edgesOf([at(0, 0), at(1, 0), at(2, 0)])).toEqual([]);
  });

  it('a screen tips over the caps of its feet: weight × half a foot and cap over its height', () => {
    const { model } = structureCaseOf('screen', 'standard');
    const weight = model.parts.reduce((sum, { mass }) => sum + mass, 0) * G;
    const figure = of('screen', 'tip-empty').figure;
    // The sheet hangs before the posts, so a little less than about the middle.
    expect(figure).toBeLessThan((weight * 275) / 980);
    expect(figure).toBeGreaterThan((weight * 260) / 1000);
  });

  it('a castor’s wheel may trail inwards', () => {
    const [first] = structureCaseOf('trolley', 'standard').edges;
    expect(Math.abs(first?.on[0] ?? 0)).toBe(640 / 2 - 20);
  });
});

describe('a lid', () => {
  it('of a toy chest is held by its stay: 40 N × 60 mm against twice its weight at its middle', () => {
    const { model } = structureCaseOf('chest', 'standard');
    const lid = model.parts.find(({ id }) => id === 'lid');
    const finding = of('chest', 'lid-holds');
    expect(finding.figure).toBeCloseTo(2.4, 9);
    const reach = Math.hypot(170 - 24.5 + 49, 27);
    expect(finding.limit).toBeGreaterThan((2 * (lid?.mass ?? 0) * G * 170) / 1000);
    expect(finding.limit).toBeLessThan((2 * (lid?.mass ?? 0) * G * reach) / 1000 * 1.01);
  });

  it('stands 13 mm over the tube it turns on and 3.5 over the rims: 27 − 14, less 9.5 of panel', () => {
    expect(of('chest', 'lid-gap').figure).toBeCloseTo(13, 6);
    expect(of('chest', 'lid-vent').figure).toBeCloseTo(3.5 * 300, 6);
  });

  it('without its stay fails', () => {
    const text = changedText(structureText('chest'), '  stay: { fitting: lid-stay, on: long.1, along: along / 2, panel: lid }\n', '');
    expect(structureCaseOf('chest', 'standard', text).model.connections.filter(({ is }) => is === 'hinge')).toHaveLength(2);
  });
});
