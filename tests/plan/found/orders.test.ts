import { describe, expect, it } from 'vitest';
import { loadSolids, type Model } from '../../../src/model/index.ts';
import { findPlan } from '../../../src/plan/found/plan.ts';
import { faultsOf } from '../../../src/plan/found/prove.ts';
import type { Doing, FoundPlan, FoundStep } from '../../../src/plan/found/types.ts';
import { deckSizes } from '../../support/all-items.ts';
import { sampled } from '../../support/samples.ts';

const solids = await loadSolids();
const sizes = sampled(deckSizes, 'plan/found/orders', 4, ({ name }) => name).map(({ name, model }) => ({ name, model: model() }));
const planned = sizes.map(({ name, model }) => ({ name, model, plan: findPlan(model, [], solids) }));

const at = ({ steps }: FoundPlan, ...kinds: readonly Doing[]): readonly FoundStep[] => steps.filter(({ does }) => kinds.includes(does));

/** Every step of the one kind comes before every step of the other, in one batch where told. */
function before({ steps }: FoundPlan, first: Doing, then: Doing, within: (one: FoundStep, other: FoundStep) => boolean = () => true): void {
  for (const early of steps.filter(({ does }) => does === first)) {
    for (const late of steps.filter(({ does }) => does === then).filter((step) => within(early, step))) {
      expect([early.key, late.key, early.number < late.number]).toEqual([early.key, late.key, true]);
    }
  }
}

const inOneBatch = (one: FoundStep, other: FoundStep): boolean => one.batch === other.batch;
const onOneSide = (one: FoundStep, other: FoundStep): boolean => inOneBatch(one, other) && one.side === other.side;

describe.each(planned)('the order found for the $name', ({ model, plan }) => {
  it('leaves every motion free, and brings every part once', () => {
    expect(faultsOf(model, plan, solids)).toEqual([]);
  });

  it('numbers its steps from 1, each with a key of its own', () => {
    expect(plan.steps.map(({ number }) => number)).toEqual(plan.steps.map((_, index) => index + 1));
    expect(new Set(plan.steps.map(({ key }) => key)).size).toBe(plan.steps.length);
  });

  it('keeps the firm rules of the work (common practice, no source)', () => {
    before(plan, 'cut-tubes', 'push');
    before(plan, 'crease', 'half-cut', inOneBatch);
    before(plan, 'half-cut', 'wrap', inOneBatch);
    before(plan, 'lay-frame', 'wrap', inOneBatch);
    before(plan, 'wrap', 'pin-side', onOneSide);
    before(plan, 'mark-posts', 'push-through');
    before(plan, 'drill', 'pin', (one, other) => one.drillsFor.some((pin) => other.newParts.includes(pin)));
    for (const step of at(plan, 'hang')) expect(plan.steps.slice(step.number).every(({ does }) => does === 'hang')).toBe(true);
  });

  it('wraps short sides before long ones, and the opposite side before a neighbour', () => {
    const { pattern } = model;
    const opposite = { left: 'right', right: 'left', front: 'back', back: 'front' } as const;
    const sides = at(plan, 'wrap').map(({ side }) => side ?? 'left');
    const lengths = sides.map((side) => pattern.flaps.find((flap) => flap.side === side)).map((flap) => Math.round((flap?.to ?? 0) - (flap?.from ?? 0)));
    expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
    expect([sides[1], sides[3]]).toEqual([opposite[sides[0] ?? 'left'], opposite[sides[2] ?? 'left']]);
  });

  it('asks for no third hand: two people at most, and what neither they nor the bench hold is propped', () => {
    for (const step of plan.steps) {
      const moving = step.moves.length > 0 ? 1 : 0;
      expect([step.key, step.held.length + moving <= 2, step.people >= step.held.length + moving || step.held.length === 0]).toEqual([step.key, true, true]);
      for (const body of [...step.held, ...step.props]) expect(body.length).toBeGreaterThan(0);
    }
  });

  it('turns the work only when nothing loose can come off, and ends with it upright', () => {
    for (const { turns, up } of at(plan, 'turn')) {
      const cos = up[0] * (turns?.to[0] ?? 0) + up[1] * (turns?.to[1] ?? 0) + up[2] * (turns?.to[2] ?? 0);
      expect(turns?.angle).toBeCloseTo(Math.acos(cos), 9);
    }
    const last = plan.steps.at(-1);
    expect((last?.turns?.to ?? last?.up)?.[2]).toBeGreaterThan(0.99);
    expect(at(plan, 'turn').length).toBeLessThanOrEqual(plan.steps.length / 4);
  });

  it('tells what moves, along what, to which mouth', () => {
    for (const step of at(plan, 'push', 'close', 'push-through', 'slide-on', 'lay-panel', 'hang')) {
      expect(step.moves.length).toBeGreaterThan(0);
      for (const { by, closes, parts } of step.moves) {
        expect([step.key, Math.hypot(...by) > 20, closes.length > 0, parts.length > 0]).toEqual([step.key, true, true, true]);
      }
    }
  });

  it('builds what is alike as one batch: all its copies have as many parts of the same kinds', () => {
    const kinds = (ids: readonly string[]): readonly string[] => ids.map((id) => model.parts.find((part) => part.id === id)?.kind ?? '').sort();
    for (const { copies, times } of plan.batches) {
      expect(times).toBeGreaterThanOrEqual(copies.length);
      for (const copy of copies) expect(kinds(copy)).toEqual(kinds(copies[0] ?? []));
    }
  });

  it('keeps every reason that it gives', () => {
    const number = new Map(plan.steps.map((step) => [step.key, step.number]));
    expect(plan.reasons.length).toBeGreaterThan(30);
    for (const { first, then, rule } of plan.reasons) expect([first, then, rule, (number.get(first) ?? NaN) < (number.get(then) ?? NaN)]).toEqual([first, then, rule, true]);
    expect(plan.reasons.some(({ rule, parts }) => rule === 'geometry' && parts.length > 0)).toBe(true);
  });
});

describe('the proof', () => {
  const { model, plan } = planned[0] as { model: Model; plan: FoundPlan };
  const changed = (key: string, change: (step: FoundStep) => FoundStep): FoundPlan =>
    ({ ...plan, steps: plan.steps.map((step) => (step.key === key ? change(step) : step)) });

  it('finds what is in the way of a fold done after the pins of its tab', () => {
    const wrap = at(plan, 'wrap')[0] as FoundStep;
    const pins = at(plan, 'pin-side').find(({ side }) => side === wrap.side)?.newParts ?? [];
    const faults = faultsOf(model, changed(wrap.key, (step) => ({ ...step, present: [...step.present, ...pins] })), solids);
    expect(faults.filter(({ what }) => what === 'in-the-way')).toEqual([{ key: wrap.key, what: 'in-the-way', parts: pins }]);
  });

  it('finds what is in the way of a piece that comes across its sockets', () => {
    const close = at(plan, 'close')[0] as FoundStep;
    const turned = changed(close.key, (step) => ({ ...step, moves: step.moves.map((move) => ({ ...move, by: [-move.by[1], move.by[0], move.by[2]] as const })) }));
    expect(faultsOf(model, turned, solids).map(({ key, what }) => [key, what])).toContainEqual([close.key, 'in-the-way']);
  });

  it('notices a part that is brought twice, and one that is lost', () => {
    const pin = at(plan, 'pin').at(-1) as FoundStep;
    expect(faultsOf(model, changed(pin.key, (step) => ({ ...step, newParts: [...step.newParts, step.newParts[0] ?? ''] })), solids).map(({ what }) => what)).toEqual(['twice']);
    expect(faultsOf(model, changed(pin.key, (step) => ({ ...step, newParts: step.newParts.slice(1) })), solids).map(({ what }) => what)).toEqual(['lost']);
  });
});

it('is the same when it is found again', () => {
  const { model, plan } = planned[0] as { model: Model; plan: FoundPlan };
  expect(JSON.stringify(findPlan(model, [], solids))).toBe(JSON.stringify(plan));
});
