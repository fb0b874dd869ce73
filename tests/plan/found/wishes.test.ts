import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { buildModel } from '../../../src/model/index.ts';
import { findPlan } from '../../../src/plan/found/plan.ts';
import { faultsOf } from '../../../src/plan/found/prove.ts';
import type { FoundPlan } from '../../../src/plan/found/types.ts';
import { FaultError, type Fault, type Item, type OrderWish } from '../../../src/read/index.ts';
import { itemNamed, modelOf } from '../../support/items.ts';
import { rackModel, solids } from '../../support/rack.ts';
import { structureFrom } from '../../support/structures.ts';

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
    ['brace:left', 'brace:back'], ['cut-notches', 'punch-holes'], ['pin-posts:back', 'pin-posts:front'],
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
    const sides = work.filter((key) => /^(wrap-side|pin-side):/.test(key));
    expect(sides.slice(0, 4)).toEqual(['wrap-side:front', 'pin-side:front', 'wrap-side:back', 'pin-side:back']);
  });
});

describe('a wish that is refused', () => {
  it.each([
    ['wrap-side:front', 'lay-frame', 'deck-1/panel'],
    ['pin-posts:front', 'push-posts:front', 'joint-pin-left-front-2'],
    ['close-frame', 'push-tubes:long', 'deck-1/joint-right-back'],
    ['pin-side:left', 'wrap-side:left', 'deck-1/panel-pin-left-1'],
  ])('%s before %s, for %s would be in the way', (first, then, part) => {
    const { field, found, remedy } = refusal(wish(first, then));
    expect([field, found]).toEqual(['order', `"${first}" before "${then}"`]);
    expect(remedy).toContain(`"${then}" comes before "${first}"`);
    expect(remedy).toContain(part);
    expect(remedy).toContain('would be in the way');
  });

  it('brace:left before stand-up, for a turn comes where the work must lie another way', () => {
    expect(refusal(wish('brace:left', 'stand-up')).remedy).toContain('"stand-up" turns the work');
  });

  it.each([['push-tubes:short', 'cut-tubes', 'tubes-cut-first'], ['push-posts:front', 'mark-posts', 'marked-before-posts']])('%s before %s, by the firm rule %s', (first, then, rule) => {
    expect(refusal(wish(first, then)).remedy).toContain(`(${rule})`);
  });

  it('when it names no step: the field is told, and the keys there are', () => {
    const { field, found, remedy } = refusal(wish('lay-frame', 'glue'));
    expect([field, found]).toEqual(['order.then', '"glue"']);
    expect(remedy).toContain('wrap-side:left');
  });

  it('when two wishes make a circle with what geometry asks', () => {
    expect(refusal(wish('pin-side:right', 'wrap-side:left'), wish('pin-side:left', 'wrap-side:right')).remedy).toContain('deck-1/panel-pin-left-1');
  });
});

describe('a wish that goes against good practice alone', () => {
  const chair = modelOf(itemNamed('chair'), 'mark-3');

  it('goes before it: cables of a face before the panel that stands before them (cables-last, common practice, no source)', () => {
    const plan = findPlan(chair, [wish('brace:back', 'hold-panel:backrest-back')], solids);
    expect(keys(plan).indexOf('brace:back')).toBeGreaterThan(0);
    expect(keys(plan).indexOf('brace:back')).toBeLessThan(keys(plan).indexOf('hold-panel:backrest-back'));
    expect(faultsOf(chair, plan, solids)).toEqual([]);
    expect(plan.reasons.some(({ rule, first, then }) => rule === 'cables-last' && first === 'hold-panel:backrest-back' && then === 'brace:back')).toBe(false);
  });
});

describe('steps alike', () => {
  const text = readFileSync(new URL('./items/coat-stand.yaml', import.meta.url), 'utf8');
  const ordered = (order: string): Item => structureFrom('coat-stand', `${text}\norder:\n${order}`);
  const stand = buildModel(ordered('  []'), 'low');
  const usual = findPlan(stand, [], solids);
  const closedBy = (plan: FoundPlan, key: string): string => JSON.stringify(plan.steps.find((step) => step.key === key)?.moves.flatMap(({ closes }) => closes.map((each) => JSON.stringify(each))).sort());

  it('are told apart by a number, which the item file takes and which means the same work in the new order', () => {
    const item = ordered('  - { first: push-tubes-4, then: push-tubes-3, because: The short rail is wanted first. }');
    const plan = findPlan(stand, item.order, solids);
    expect(keys(plan).indexOf('push-tubes-4')).toBeLessThan(keys(plan).indexOf('push-tubes-3'));
    expect([...keys(plan)].sort()).toEqual([...keys(usual)].sort());
    for (const key of ['push-tubes', 'push-tubes-2', 'push-tubes-3', 'push-tubes-4', 'push-tubes-5']) expect([key, closedBy(plan, key)]).toEqual([key, closedBy(usual, key)]);
    expect(faultsOf(stand, plan, solids)).toEqual([]);
  });

  it('keep their names when others trade places', () => {
    const plan = findPlan(stand, [wish('pin-posts:right', 'pin-posts:left')], solids);
    expect(keys(plan).indexOf('pin-posts:right')).toBeLessThan(keys(plan).indexOf('pin-posts:left'));
    expect(closedBy(plan, 'push-tubes-5')).toBe(closedBy(usual, 'push-tubes-5'));
  });

  it('that there are none of are refused, with file, line and the keys that there are', () => {
    const item = ordered('  - { first: push-tubes-9, then: push-tubes-3, because: Nothing. }');
    expect(() => findPlan(stand, item.order, solids)).toThrow(/^steps\/coat-stand\/item\.yaml:\d+:\d+ order\.first: found "push-tubes-9", would be right: the key of a step, one of .*push-tubes-5, /);
  });
});
