// Bend allowance BA = θ (R + K t): DIN 6935 default K and worked flat lengths (R2/C), Machinery's Handbook 26th ed. K by material (R2), facets tangent to a tube (C).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { creaseCount, creaseSpacing, wrapAngle } from '../../src/model/index.ts';

const DEG = Math.PI / 180;
const MANY = 2000;

/** BA = θ (R + K t), θ rad, lengths mm. */
const bendAllowance = (angle: number, radius: number, k: number, thickness: number): number => angle * (radius + k * thickness);

/** DIN 6935 default K (R2), capped at 0.5 for r/s > 5 (M, from memory). */
const dinK = (radius: number, thickness: number): number =>
  (radius / thickness > 5 ? 0.5 : (0.65 + Math.log10(radius / thickness) / 2) / 2);

/** Length on the flat that `creases` creases take for a bend, by the model. */
const developed = (angle: number, radius: number, thickness: number, k: number, creases: number): number =>
  creases * creaseSpacing(radius, thickness, k, angle / creases);

/** Two outside legs less the two setbacks, plus the bend. `opening` is the angle between the legs. */
const flatLength = (legs: number, opening: number, radius: number, thickness: number, bend: number): number =>
  legs - 2 * (radius + thickness) * Math.tan((180 * DEG - opening) / 2) + bend;

describe('many creases take the length of a bend', () => {
  // DIN 6935 worked lengths, outside legs 50 + 50 (C).
  it.each([
    { opening: 90, s: 2, r: 2, allowance: 4.1626, flat: 96.163 },
    { opening: 90, s: 1, r: 2, allowance: 3.7703, flat: 97.770 },
    { opening: 90, s: 4, r: 25, allowance: 42.4115, flat: 84.412 },
    { opening: 120, s: 5, r: 6, allowance: 8.0885, flat: 95.387 },
  ])('DIN 6935, opening $opening°, s $s, r $r: $allowance and $flat mm', ({ opening, s, r, allowance, flat }) => {
    const angle = (180 - opening) * DEG;
    const bend = developed(angle, r, s, dinK(r, s), MANY);
    expect(bend).toBeCloseTo(allowance, 3);
    expect(flatLength(100, opening * DEG, r, s, bend)).toBeCloseTo(flat, 2);
  });

  // Machinery's Handbook, 26th ed., K by material (R2), measured back from a coupon: K = (BA/θ − R)/t. Inches.
  it.each([
    { material: 'aluminium', t: 0.063, r: 0.06, k: 0.402 },
    { material: 'cold-rolled steel', t: 0.06, r: 0.06, k: 0.463 },
    { material: 'stainless steel', t: 0.078, r: 0.06, k: 0.446 },
  ])('gives back K $k of $material from a strip folded by 90°', ({ t, r, k }) => {
    const coupon = developed(90 * DEG, r, t, k, MANY);
    expect(coupon).toBeCloseTo(bendAllowance(90 * DEG, r, k, t), 6);
    expect((coupon / (90 * DEG) - r) / t).toBeCloseTo(k, 4);
  });

  // Panel on the neutral layer, D = 25, t = 5, 180° (C).
  it.each([[0, 39.270], [0.5, 47.124], [1, 54.978]])('tube 25, panel 5, k %d: %d mm over 180°', (k, length) => {
    expect(developed(Math.PI, 12.5, 5, k, MANY)).toBeCloseTo(length, 3);
  });

  it('comes nearer with every crease, always from above, by a twelfth of the squared crease angle', () => {
    fc.assert(fc.property(
      fc.double({ min: 5, max: 60, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0.5, max: 5, noNaN: true }), fc.integer({ min: 3, max: 60 }),
      (radius, thickness, k, angle, creases) => {
        const exact = bendAllowance(angle, radius, k, thickness);
        const [few, more] = [developed(angle, radius, thickness, k, creases), developed(angle, radius, thickness, k, creases + 1)];
        expect(more).toBeLessThan(few);
        expect(more).toBeGreaterThan(exact);
        // tan x = x + x³/3 + …: the excess share is (φ/2)²/3 = φ²/12 to the first order.
        const many = developed(angle, radius, thickness, k, 400);
        expect((many / exact - 1) / ((angle / 400) ** 2 / 12)).toBeCloseTo(1, 3);
      },
    ));
  });
});

describe('facets that touch a tube', () => {
  // CHECKS "Facets tangent to a tube" (C): pitch 2R tan(θ/2), total against the arc.
  it.each([
    { diameter: 25, fold: 180, creases: 4, pitch: 10.3553, total: 41.421, arc: 39.270 },
    { diameter: 32, fold: 270, creases: 6, pitch: 13.2548, total: 79.529, arc: 75.398 },
  ])('tube $diameter, $fold°, $creases creases: pitch $pitch, total $total against $arc mm', ({ diameter, fold, creases, pitch, total, arc }) => {
    const angle = fold * DEG;
    expect(creaseSpacing(diameter / 2, 0, 0, angle / creases)).toBeCloseTo(pitch, 4);
    expect(developed(angle, diameter / 2, 0, 0, creases)).toBeCloseTo(total, 3);
    expect(bendAllowance(angle, diameter / 2, 0, 0)).toBeCloseTo(arc, 3);
  });

  it.each([[45, 5.479], [36, 3.425], [30, 2.349]])('%d° a crease is %d % longer than the arc, whatever tube and panel (C)', (degrees, percent) => {
    for (const [radius, thickness, k] of [[12.5, 0, 0], [14.5, 9, 1], [20, 5, 0.4]] as const) {
      const share = creaseSpacing(radius, thickness, k, degrees * DEG) / bendAllowance(degrees * DEG, radius, k, thickness) - 1;
      expect(100 * share).toBeCloseTo(percent, 3);
    }
  });

  it('as few creases as the panel allows: five of 45° for the usual flap (common practice, no source), six at 40°', () => {
    expect(wrapAngle(45 * DEG)).toBeCloseTo(225 * DEG, 12);
    expect(creaseCount(45 * DEG, 45 * DEG)).toBe(5);
    expect(creaseCount(45 * DEG, 44.9 * DEG)).toBe(6);
    expect(creaseCount(90 * DEG, 45 * DEG)).toBe(6);
    expect(creaseCount(45 * DEG, 225 * DEG)).toBe(1);
  });

  it('no crease is sharper than the panel allows, and one crease less would be', () => {
    fc.assert(fc.property(fc.double({ min: 0.2, max: 1.4, noNaN: true }), fc.double({ min: 0.1, max: 1.5, noNaN: true }), (turnBack, tightest) => {
      const creases = creaseCount(turnBack, tightest);
      expect(wrapAngle(turnBack) / creases).toBeLessThanOrEqual(tightest * (1 + 1e-8));
      expect(wrapAngle(turnBack) / (creases - 1)).toBeGreaterThan(tightest);
    }));
  });
});
