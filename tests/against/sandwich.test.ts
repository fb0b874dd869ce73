// Sandwich strips against computed handbook cases (C), the arc of a parabola and a numerical strip (C).
import { describe, expect, it } from 'vitest';
import { edgePull, sagStretch } from '../../src/check/formulas/pull.ts';
import { bendingSag, coreShear, crossingShares, faceStress, give, shearSag, type Strip } from '../../src/check/formulas/sandwich.ts';

const stiff: Strip = { width: 500, skin: 0.5, faceDistance: 25.5, skinModulus: 70_000, coreShearModulus: 220, span: 2000 };
const soft: Strip = { width: 300, skin: 0.8, faceDistance: 9.2, skinModulus: 1200, coreShearModulus: 4, span: 600 };

describe('a thin-faced sandwich strip under an even load', () => {
  it('b 500, t_f 0.5, t_c 25, E 70 GPa, G 220 MPa, L 2000, 1500 N: 27.462 + 0.134 mm, faces 58.82 N/mm² (C)', () => {
    expect(bendingSag(1500, stiff)).toBeCloseTo(27.462, 3);
    expect(shearSag(1500, stiff)).toBeCloseTo(0.134, 3);
    expect(faceStress(1500, stiff)).toBeCloseTo(58.82, 2);
  });

  it('b 300, t_f 0.8, t_c 8.4, E 1200, G 4, L 600, 0.05 N/mm: 6.923 + 0.204 mm (C)', () => {
    expect(bendingSag(0.05 * 600, soft)).toBeCloseTo(6.923, 3);
    expect(shearSag(0.05 * 600, soft)).toBeCloseTo(0.204, 3);
  });

  it('agrees with the strip summed slice by slice: unit-load integrals of moment and shear (C)', () => {
    const load = 120;
    const slices = 4000;
    const h = soft.span / slices;
    const middles = Array.from({ length: slices }, (_, index) => (index + 0.5) * h);
    const w = load / soft.span;
    const faces = (soft.skinModulus * soft.skin * soft.faceDistance ** 2 * soft.width) / 2;
    const core = soft.width * soft.faceDistance * soft.coreShearModulus;
    const moment = (x: number): number => (w * x * (soft.span - x)) / 2;
    const unitMoment = (x: number): number => Math.min(x, soft.span - x) / 2;
    const shear = (x: number): number => Math.abs(w * (soft.span / 2 - x)) / 2;
    const sum = (term: (x: number) => number): number => middles.reduce((total, x) => total + term(x) * h, 0);
    expect(bendingSag(load, soft)).toBeCloseTo(sum((x) => (moment(x) * unitMoment(x)) / faces), 4);
    expect(shearSag(load, soft)).toBeCloseTo(sum((x) => shear(x) / core), 4);
  });

  it('the core bears half the load at each tube: 1500 N on 500 × 25.5 gives 0.0588 N/mm² (C)', () => {
    expect(coreShear(1500, stiff)).toBeCloseTo(0.05882, 5);
  });
});

describe('the pull of a sagging panel', () => {
  it('stretches as the arc of a parabola measured step by step (C)', () => {
    const [span, sag, steps] = [540, 10.8, 20_000];
    const y = (x: number): number => 4 * sag * (x / span) * (1 - x / span);
    let arc = 0;
    for (let step = 0; step < steps; step += 1) {
      const [a, b] = [(step * span) / steps, ((step + 1) * span) / steps];
      arc += Math.hypot(b - a, y(b) - y(a));
    }
    expect(sagStretch(sag, span)).toBeCloseTo(arc - span, 2);
  });

  it('with tubes that do not give, is the pull of that stretch in the two skins: E A ε (C)', () => {
    const give = soft.span / (soft.skinModulus * 2 * soft.skin * soft.width);
    const strain = sagStretch(6, soft.span) / soft.span;
    expect(edgePull(6, soft.span, give, 0)).toBeCloseTo(soft.skinModulus * 2 * soft.skin * soft.width * strain, 6);
    expect(edgePull(6, soft.span, give, give)).toBeCloseTo(edgePull(6, soft.span, give, 0) / 3, 9);
  });
});

describe('strips that cross under an even load', () => {
  const across = (span: number, width = 300): Strip => ({ ...soft, coreShearModulus: 1e9, span, width });

  it('share it as Rankine and Grashof have it, L₂⁴ : L₁⁴ for equal loads a length (C): twice the span bears a seventeenth', () => {
    // Each strip is as wide as the other is long.
    const [short, long] = crossingShares([across(500, 1000), across(1000, 500)].map(give));
    expect(short).toBeCloseTo(16 / 17, 6);
    expect(long).toBeCloseTo(1 / 17, 6);
  });

  it('sag alike and bear the whole load together', () => {
    const strips = [soft, { ...soft, span: 400, width: 500 }];
    const shares = crossingShares(strips.map(give));
    const sags = strips.map((strip, index) => (shares[index] ?? NaN) * give(strip));
    expect(sags[0]).toBeCloseTo(sags[1] ?? NaN, 12);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it('a square on four sides sags more than a plate whose corners are whole: 5/768 against 0.00406 q a⁴ / D (Timoshenko, M)', () => {
    const one = across(1000, 1000);
    const sag = 0.5 * give(one);
    const plate = (0.00406 * 1 * 1000 ** 2) / (one.skinModulus * one.skin * one.faceDistance ** 2 / 2);
    expect(sag).toBeGreaterThan(plate);
    expect(sag / plate).toBeCloseTo(5 / 768 / 0.00406, 3);
  });

  it('under one line load, twice the span sags sixteen times as far', () => {
    expect((2 * give(across(1200))) / give(across(600))).toBeCloseTo(16, 6);
  });
});
