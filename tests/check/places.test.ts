// Loads by place, time and impact: the figures by hand beside the room (C).
import { describe, expect, it } from 'vitest';
import { middleLoadDeflection, middleLoadMoment } from '../../src/check/formulas/beam.ts';
import { defaultLimits } from '../../src/check/index.ts';
import { caseOf } from '../../src/check/case.ts';
import { cornerShare, nearShare, standingsOf } from '../../src/check/load/standings.ts';
import { openEdges } from '../../src/check/load/edges.ts';
import { findingOf } from './finding.ts';
import { changed, declaredOf, modelOf } from './items.ts';
import type { Case } from '../../src/check/types.ts';
import type { Model } from '../../src/model/index.ts';

const caseFor = (model: Model, load: number): Case => caseOf(model, declaredOf(model), defaultLimits, load);
/** All of the test load is laid on, without a reserve. */
const unreserved = { ...defaultLimits, loadReserve: { ...defaultLimits.loadReserve, value: 1 } };
/** Tube 28 × 3: π/64 (28⁴ − 22⁴), mm⁴, and its modulus used, N/mm². */
const [I, E] = [(Math.PI / 64) * (28 ** 4 - 22 ** 4), 23_000 * 0.7];

describe('a load on a stretch in the middle of a tube', () => {
  it('is the line load of any handbook where it covers all, 5 P L³ / 384 E I, and P L³ / 48 E I in one point', () => {
    expect(middleLoadDeflection(200, 1000, 1000, E, I)).toBeCloseTo((5 * 200 * 1000 ** 3) / (384 * E * I), 9);
    expect(middleLoadDeflection(200, 1000, 0, E, I)).toBeCloseTo((200 * 1000 ** 3) / (48 * E * I), 9);
    expect(middleLoadMoment(200, 1000, 0)).toBe(50_000);
  });
});

describe('where a load stands', () => {
  it('on one half of a deck three quarters of it come to the nearer tube: its middle a quarter of the depth from there', () => {
    const one = standingsOf(caseFor(modelOf('desk', 'mark-6'), 300)).find(({ stands }) => stands === 'one-sided');
    expect(one?.share).toBe(nearShare(540 / 4, 540));
  });

  it('at a corner the shares along and across are multiplied', () => {
    const inside = 100 - 23.5;
    expect(cornerShare(caseFor(modelOf('stool', 'standard'), 1300))).toBeCloseTo((1 - inside / 485) ** 2, 9);
  });

  it('a stool’s panel under 1300 N on 200 mm: half on each of two strips 337 mm wide over 485', () => {
    const weight = modelOf('stool', 'standard').parts.find(({ kind }) => kind === 'panel')?.mass ?? NaN;
    const own = ((weight * 9.80665) / 2 * 485) / 8;
    expect(findingOf(modelOf('stool', 'standard'), 'panel-skin', unreserved).figure).toBeCloseTo((650 * (485 / 4 - 200 / 8) + own) / (337 * 8 * 1), 3);
  });
});

describe('edges', () => {
  it('a desk is open all round, a bed where its guard is no guard', () => {
    expect(openEdges(caseFor(modelOf('desk', 'mark-6'), 0)).map(({ span }) => span)).toEqual([660, 660, 540, 540]);
    expect(openEdges(caseFor(modelOf('bed', 'toddler'), 0)).map(({ span }) => span)).toEqual([540]);
  });

  it('600 N on 300 mm of a desk’s edge, 36.5 mm inside its tube', () => {
    const expected = middleLoadDeflection(600 * (1 - 36.5 / 540), 660, 300, E, I);
    expect(findingOf(modelOf('desk', 'mark-6'), 'edge-sag').figure).toBeCloseTo(expected, 3);
  });

  it('an adult on the open end of a bed, 76.5 mm inside its tube', () => {
    const stress = (1000 * (1 - 76.5 / 940) * (540 / 4 - 400 / 8)) / (I / 14);
    expect(findingOf(modelOf('bed', 'toddler'), 'adult-edge').figure).toBeCloseTo(stress, 3);
  });
});

describe('weight that leans', () => {
  it('lengthens the sway by 1 / (1 − W drift / push height)', () => {
    const model = modelOf('rack', 'tall');
    const light = { ...defaultLimits, gravity: { ...defaultLimits.gravity, value: 1e-9 }, sideForceShare: { ...defaultLimits.sideForceShare, value: 0 }, loadCap: { ...defaultLimits.loadCap, value: 0 }, nominalLoad: { ...defaultLimits.nominalLoad, value: 1e-9 }, leastSafeLoad: { ...defaultLimits.leastSafeLoad, value: 0 } };
    const first = findingOf(model, 'sway', light).figure;
    const laden = { ...light, nominalLoad: { ...light.nominalLoad, value: 150 }, leastSafeLoad: { ...light.leastSafeLoad, value: 1 } };
    const height = Math.max(...model.groups.map(({ level }) => level));
    const all = first + (caseFor(model, 150).stance.braced?.lean.all.x ?? NaN) * 150;
    expect(findingOf(model, 'sway', laden).figure).toBeCloseTo(all / (1 - (5 * 150 * all) / (30 * height)), 3);
  });
});

describe('time', () => {
  it('after ten years a rack’s tube sags 87 600^0.04 times as far', () => {
    const model = modelOf('rack', 'standard');
    const [now, then] = [findingOf(model, 'tube-deflection'), findingOf(model, 'long-term-sag')];
    if (!then.parts.some((part) => part.includes('tube'))) throw new Error('the panel decides');
    expect(then.figure / now.figure).toBeCloseTo(87_600 ** 0.04, 4);
  });
});

describe('a child’s jump', () => {
  it('a bed is tested with twice 50 lb and promised half of it at most', () => {
    expect(2 * 50 * 0.45359237 * 9.80665).toBeCloseTo(444.8, 1);
    expect(findingOf(changed('bed', 'nap', {}), 'use-load').limit).toBe(450);
  });
});
