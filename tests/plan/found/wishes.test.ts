import { describe, expect, it } from 'vitest';
import { findPlan } from '../../../src/plan/found/plan.ts';
import { faultsOf } from '../../../src/plan/found/prove.ts';
import type { FoundPlan } from '../../../src/plan/found/types.ts';
import { FaultError, type Fault, type OrderWish } from '../../../src/read/index.ts';
import { rackModel, solids } from '../../support/rack.ts';

const model = rackModel('standard');
const position = { file: 'steps/rack/item.yaml', line: 75, column: 5 };
const wish = (first: string, then: string): OrderWish => ({ first, then, because: 'The cooperative tries another order.', position });
const wishing = (...wishes: readonly OrderWish[]): FoundPlan => findPlan(model, wishes, solids);
const keys = ({ steps }: FoundPlan): readonly string[] => steps.map(({ key }) => key);

function refusal(...wishes: readonly OrderWish[]): Fault {
  try {
    wishing(...wishes);
  } catch (error) {
    if (error instanceof FaultError && error.faults.length === 1) return error.faults[0] as Fault;
    throw error;
  }
  throw new Error('not refused');
}

describe('a wish that does no harm', () => {
  const usual = wishing();

  it.each([
    ['pin-middle:left', 'pin-ends:left'], ['brace:left', 'brace:back'], ['cut-notches', 'punch-holes'], ['pin-posts:back', 'pin-posts:front'],
  ])('is kept, and the plan proven anew: %s before %s', (first, then) => {
    const plan = wishing(wish(first, then));
    expect(keys(plan).indexOf(first)).toBeGreaterThanOrEqual(0);
    expect(keys(plan).indexOf(first)).toBeLessThan(keys(plan).indexOf(then));
    expect(plan.steps.length).toBe(usual.steps.length);
    expect(plan.reasons).toContainEqual({ first, then, rule: 'designer', parts: [] });
    expect(faultsOf(model, plan, solids)).toEqual([]);
  });

  it('has long sides wrapped first, opposite ones together, each pinned before the next', () => {
    const work = keys(wishing(wish('wrap-side:front', 'wrap-side:left'), wish('wrap-side:back', 'wrap-side:left')));
    const sides = work.filter((key) => /^(wrap-side|pin-ends):/.test(key));
    expect(sides.slice(0, 4)).toEqual(['wrap-side:front', 'pin-ends:front', 'wrap-side:back', 'pin-ends:back']);
  });
});

describe('a wish that is refused', () => {
  it.each([
    ['wrap-side:front', 'lay-frame', 'deck-1/panel'],
    ['pin-posts:front', 'push-posts:front', 'joint-pin-left-front-2'],
    ['close-frame', 'push-tubes:long', 'deck-1/joint-right-back'],
    ['pin-ends:left', 'wrap-side:left', 'deck-1/panel-pin-left-1'],
  ])('%s before %s, for %s would be in the way', (first, then, part) => {
    const { field, found, remedy } = refusal(wish(first, then));
    expect([field, found]).toEqual(['order', `"${first}" before "${then}"`]);
    expect(remedy).toContain(`"${then}" comes before "${first}"`);
    expect(remedy).toContain(part);
    expect(remedy).toContain('would be in the way');
  });

  it.each([['brace:left', 'stand-up', 'cables-last'], ['push-tubes:short', 'cut-tubes', 'tubes-cut-first']])('%s before %s, by the firm rule %s', (first, then, rule) => {
    expect(refusal(wish(first, then)).remedy).toContain(`(${rule})`);
  });

  it('when it names no step: the field is told, and the keys there are', () => {
    const { field, found, remedy } = refusal(wish('lay-frame', 'glue'));
    expect([field, found]).toEqual(['order.then', '"glue"']);
    expect(remedy).toContain('wrap-side:left');
  });

  it('when two wishes make a circle with what geometry asks', () => {
    expect(refusal(wish('pin-ends:right', 'wrap-side:left'), wish('pin-ends:left', 'wrap-side:right')).remedy).toContain('deck-1/panel-pin-left-1');
  });
});
