// Tipping against GB/T 10357.4 (R: due over 600 mm and over 6 kg·m) and the balance of a solid block (C).
import { describe, expect, it } from 'vitest';
import { caseOf } from '../../src/check/case.ts';
import { defaultLimits } from '../../src/check/index.ts';
import { tippingAngle, tippingForce } from '../../src/check/formulas/tipping.ts';
import { emptyBody } from '../../src/check/tip/body.ts';
import { tipTest } from '../../src/check/tip/tip-test.ts';
import type { Case } from '../../src/check/types.ts';
import type { Model } from '../../src/model/index.ts';
import { forAdults } from '../check/items.ts';
import { rack } from '../check/rack.ts';

const given = (model: Model): Case => caseOf(model, forAdults, defaultLimits, 0);

/** The same rack with every mass multiplied. */
const heavier = (model: Model, times: number): Model =>
  ({ ...model, parts: model.parts.map((part) => ({ ...part, mass: part.mass * times })) });

describe('a solid block 500 mm deep, 1000 mm tall, 20 kg', () => {
  it('tips at 49.03 N pushed at its top, and on a slope of atan(250 / 500) (C)', () => {
    expect(tippingForce(20 * 9.80665, 250, 1000)).toBeCloseTo(49.033, 3);
    expect((tippingAngle(250, 500) * 180) / Math.PI).toBeCloseTo(26.565, 3);
  });
});

describe('the rule for storage furniture, GB/T 10357.4 (R)', () => {
  const model = rack();
  const body = emptyBody(given(model));
  const moment = (body.centreHeight / 1000) * body.mass;

  it('a test is due only over 6 kg·m: just under passes, just over is a caution', () => {
    expect(tipTest(given(heavier(model, 5.99 / moment)))[0]?.verdict).toBe('pass');
    expect(tipTest(given(heavier(model, 6.01 / moment)))[0]?.verdict).toBe('caution');
  });

  it('a heavy item up to 600 mm is let off by its height, told in mm', () => {
    const low = rack({ height: 600, decks: 2, lowest: 150 });
    const [finding] = tipTest(given(heavier(low, 20)));
    expect(finding).toMatchObject({ verdict: 'pass', unit: 'mm', figure: 600, limit: 600 });
    const [taller] = tipTest(given(heavier(rack({ height: 601, decks: 2, lowest: 150 }), 20)));
    expect(taller?.verdict).toBe('caution');
  });
});

describe('the centre of gravity of the rack', () => {
  it('is the mass-weighted mean of decks, posts and cables reckoned by hand (C)', () => {
    const model = rack();
    const body = emptyBody(given(model));
    expect(body.mass).toBeCloseTo(model.parts.reduce((sum, part) => sum + part.mass, 0), 9);
    expect(body.arm).toBeCloseTo(270 - meanOffset(model), 0);
    expect(body.height).toBeCloseTo(1500, 6);
    const decks = model.deckTops.map((top) => top - 15);
    const deckMass = model.parts.filter((part) => part.group !== null).reduce((sum, part) => sum + part.mass, 0);
    const rest = body.mass - deckMass;
    const byHand = (deckMass * (decks.reduce((sum, z) => sum + z, 0) / decks.length) + rest * 750) / body.mass;
    expect(Math.abs(body.centreHeight - byHand)).toBeLessThan(15);
  });
});

/** The cables at the back draw the middle a little that way: two of their masses at 270 mm and some. */
function meanOffset(model: Model): number {
  const mass = model.parts.reduce((sum, part) => sum + part.mass, 0);
  const back = model.parts.filter((part) => part.id.startsWith('cable-back')).reduce((sum, part) => sum + part.mass, 0);
  return (back * 300) / mass;
}
