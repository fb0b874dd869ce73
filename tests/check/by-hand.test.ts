// The load figures of the standard rack at 100 N a deck, reckoned with plain numbers beside the room (C).
import { describe, expect, it } from 'vitest';
import { defaultLimits } from '../../src/check/index.ts';
import { caseOf } from '../../src/check/case.ts';
import { loadChecks } from '../../src/check/load/index.ts';
import type { Case, Finding } from '../../src/check/types.ts';
import type { Model } from '../../src/model/index.ts';
import { rack } from './rack.ts';
import { forAdults } from './items.ts';

const G = 9.80665;
const LOAD = 100;

/** Each frame is solved once. */
const solved = new Map<Model, Case>();

function at100(model: Model, name: string): Finding {
  const given = solved.get(model) ?? caseOf(model, forAdults, defaultLimits, LOAD);
  solved.set(model, given);
  const found = loadChecks.flatMap((check) => check(given)).find((finding) => finding.name === name);
  if (!found) throw new Error(`no finding ${name}`);
  return found;
}

const massOf = (model: Model, part: (id: string) => boolean): number =>
  model.parts.reduce((sum, { id, mass }) => sum + (part(id) ? mass : 0), 0);

/** The two may differ by 2 parts in 10 000: the hand figures have five digits. */
const near = (figure: number, hand: number): void => { expect(Math.abs(figure / hand - 1)).toBeLessThan(2e-4); };

describe('standard rack, 100 N a deck', () => {
  const model = rack();
  const deck = massOf(model, (id) => id.startsWith('deck-1/')) * G;
  const panel = massOf(model, (id) => id === 'deck-1/panel') * G;

  it('tube 28 × 2.5 over 1040 mm: I 16 435.2 mm⁴, W 1173.94 mm³, E 11 900 N/mm²', () => {
    near(at100(model, 'tube-deflection').figure, (5 * (0.75 * LOAD + deck / 2) * 1040 ** 3) / (384 * 11_900 * 16_435.2));
    // All of the load in a box of 300 mm that stands flush with the front edge, 126.5 mm inside the tube.
    const bending = at100(model, 'tube-bending').figure;
    const down = ((1 - 126.5 / 540) * LOAD * (1040 / 4 - 300 / 8) + ((deck / 2) * 1040) / 8) / 1173.94;
    expect(bending).toBeGreaterThanOrEqual(down * (1 - 1e-5));
    expect(bending).toBeLessThan(1.02 * down);
    near(at100(model, 'tube-bending').limit, (170 * 0.7) / 3);
  });

  it('panel strips as wide as their flaps, 892 over 540 and 392 over 1040, sag alike: h 8.2, E 720, G 2.4', () => {
    const give = (span: number, width: number): number =>
      (5 / 384) * (span ** 3 / ((720 * 0.8 * 8.2 ** 2 * width) / 2)) + span / 8 / (width * 8.2 * 2.4);
    const [short, long] = [give(540, 892), give(1040, 392)];
    const load = ((LOAD + panel) * long) / (short + long);
    near(at100(model, 'panel-sag').figure, load * short);
    // On one half of the strip, three quarters of it come to one end.
    near(at100(model, 'panel-core').figure, (0.75 * load) / (892 * 8.2));
  });

  it('panel under one box of 300 mm in its middle: it works on 300 + 0.6 of the span, 624 of 892 and all of 392 mm', () => {
    const give = (span: number, width: number): number =>
      (8 * span ** 3 - 4 * span * 300 ** 2 + 300 ** 3) / 384 / ((720 * 0.8 * 8.2 ** 2 * width) / 2) + (span / 4 - 300 / 8) / (width * 8.2 * 2.4);
    const [short, long] = [give(540, 624), give(1040, 392)];
    const box = (LOAD * long) / (short + long);
    near(at100(model, 'panel-skin').figure, (box * (540 / 4 - 300 / 8) + ((panel / 2) * 540) / 8) / (624 * 8.2 * 0.8));
  });

  it('posts bow between the lowest and the top deck, 1320 mm, under the three decks over the lowest', () => {
    const rest = massOf(model, (id) => !id.startsWith('deck-')) * G;
    near(at100(model, 'post-buckling').limit, (Math.PI ** 2 * 11_900 * 16_435.2) / 1320 ** 2 / 3);
    // All of each load in a box at one corner, 126.5 mm inside the tubes: so far off the middle that one post counts for more than a quarter.
    const share = (1 + Math.hypot(520 - 126.5, 270 - 126.5) / Math.hypot(520, 270)) / 4;
    near(at100(model, 'post-buckling').figure, share * 3 * LOAD + 0.375 * (3 * deck + rest));
  });

  it('pin 6 mm, f_up 240: 6514.4 N over 1.5; tube walls: 2700 N × 0.7 / 3', () => {
    near(at100(model, 'pin-shear').limit, 6514.4 / 1.5);
    near(at100(model, 'pin-bearing').limit, 630);
    near(at100(model, 'pin-bearing').figure, (1 - 126.5 / 1040) * (1 - 126.5 / 540) * LOAD + 0.375 * deck);
  });

  it('sways further than stiff decks on cables alone would: cable 1680.5 mm long at the back, the sides hold it from turning', () => {
    const push = 30 + 0.015 * (4 * LOAD + massOf(model, () => true) * G);
    const [back, side] = [(60_000 * 1040 ** 2) / 1680.476 ** 3, (60_000 * 540 ** 2) / 1426.184 ** 3];
    const turn = (push * 270) / (2 * side * 520 ** 2);
    const lowerBound = push / back + turn * 540;
    // The posts lean about their feet, 126.5 mm under the cables: work lengthens the drift by (1446.5 / 1320)².
    expect(at100(model, 'sway').figure).toBeGreaterThan(lowerBound);
    expect(at100(model, 'sway').figure).toBeLessThan(1.35 * lowerBound * (1446.5 / 1320) ** 2);
    expect(at100(model, 'cable-pull').figure).toBeGreaterThan(push / (1040 / 1680.476));
  });
});

describe('a rack on long legs', () => {
  it('has legs free at the foot, K = 2, under both decks', () => {
    const model = rack({ height: 1000, lowest: 700, headroom: 30, decks: 2 });
    near(at100(model, 'post-buckling').limit, (Math.PI ** 2 * 11_900 * 16_435.2) / (2 * 676.5) ** 2 / 3);
  });
});
