import { describe, expect, it } from 'vitest';
import { orderedJobs, planItem, provenClashes, rulesFor, sidesInOrder } from '../../src/plan/index.ts';
import { orderJobs, type Ordering } from '../../src/plan/order.ts';
import { FaultError, type Fault } from '../../src/read/index.ts';
import { rackModel, rackWishing, solids, type WrittenWish } from '../support/rack.ts';

const model = rackModel('standard');
const usual = orderedJobs(model, [], solids);
const must = usual.reasons.filter(({ rule }) => rule === 'needed' || rule === 'geometry');

/** The order that an item file with these wishes gets. The proofs are the model's own, made once. */
const wishing = (...wishes: readonly WrittenWish[]): Ordering =>
  orderJobs(usual.jobs, must, rackWishing(...wishes).order, rulesFor(model.pattern, sidesInOrder(model.pattern, wishes)));

const wish = (first: string, then: string): WrittenWish => ({ first, then });

function refusal(...wishes: readonly WrittenWish[]): FaultError {
  try {
    wishing(...wishes);
  } catch (error) {
    if (error instanceof FaultError) return error;
    throw error;
  }
  throw new Error('not refused');
}

const onlyFault = ({ faults }: FaultError): Fault => {
  expect(faults).toHaveLength(1);
  return faults[0] as Fault;
};

const keys = ({ jobs }: Ordering): readonly string[] => jobs.map((job) => job.key);

describe('a wish that does no harm', () => {
  it('changes the order where it asks to: pin the middle before the ends', () => {
    const ordering = wishing(wish('pin-middle:left', 'pin-ends:left'));
    expect(keys(ordering).indexOf('pin-middle:left')).toBe(keys(ordering).indexOf('pin-ends:left') - 1);
    const others = (list: readonly string[]): readonly string[] => list.filter((key) => !/pin-(middle|ends):left/.test(key));
    expect(others(keys(ordering))).toEqual(others(keys(usual)));
    expect(ordering.reasons).toContainEqual({ first: 'pin-middle:left', then: 'pin-ends:left', rule: 'designer', parts: [] });
    expect(provenClashes(model, ordering.jobs, solids)).toEqual([]);
  });

  const longFirst = [wish('wrap-side:front', 'wrap-side:left'), wish('wrap-side:back', 'wrap-side:left')] as const;

  it('wraps long sides before short ones', () => {
    const ordering = wishing(...longFirst);
    expect(keys(ordering).filter((key) => key.startsWith('wrap-side:')))
      .toEqual(['wrap-side:front', 'wrap-side:back', 'wrap-side:left', 'wrap-side:right']);
    expect(provenClashes(model, ordering.jobs, solids)).toEqual([]);
  });

  it('pins each side before the next is wrapped, whatever the order of sides', () => {
    const work = keys(wishing(...longFirst)).filter((key) => /^(wrap-side|pin-ends):/.test(key));
    for (const side of ['front', 'back', 'left', 'right']) expect(work[work.indexOf(`wrap-side:${side}`) + 1]).toBe(`pin-ends:${side}`);
  });

  it('loses and doubles no step', () => {
    for (const one of [wish('wrap-side:front', 'wrap-side:left'), wish('brace:left', 'brace:back'), wish('cut-notches', 'punch-holes')]) {
      const ordering = wishing(one);
      expect([...keys(ordering)].sort()).toEqual([...keys(usual)].sort());
      expect(keys(ordering).indexOf(one.first)).toBeLessThan(keys(ordering).indexOf(one.then));
    }
  });

  it('overrides only the rules in its way', () => {
    const given = (ordering: Ordering): readonly string[] => ordering.reasons.map(({ first, then, rule }) => `${rule}: ${first} < ${then}`);
    const kept = given(wishing(wish('brace:left', 'brace:back')));
    expect(given(usual).filter((reason) => !kept.includes(reason))).toEqual(['back-before-ends: brace:back < brace:left']);
  });

  it('comes through the file into the plan\'s steps', () => {
    const steps = planItem(model, rackWishing(wish('brace:left', 'brace:back')).order, solids).steps.map((step) => step.key);
    expect(steps.slice(-3)).toEqual(['brace:left', 'brace:back', 'brace:right']);
  });
});

describe('a wish that locks a part out', () => {
  it.each([
    ['wrap-side:front', 'lay-frame', 'deck-1/panel'],
    ['pin-posts:front', 'push-posts:front', 'joint-pin-left-front-2'],
    ['close-frame', 'push-tubes:long', 'deck-1/joint-right-back'],
    ['pin-ends:left', 'wrap-side:left', 'deck-1/panel-pin-left-1'],
    ['push-posts:back', 'stand-decks', 'post-left-back'],
    ['wrap-side:right', 'close-frame', 'deck-1/panel'],
  ])('%s before %s is refused, with %s and the place in the file', (first, then, part) => {
    const error = refusal(wish(first, then));
    const fault = onlyFault(error);
    expect(fault.position).toEqual({ file: 'steps/rack/item.yaml', line: 77, column: 5 });
    expect(fault.field).toBe('order');
    expect(fault.found).toBe(`"${first}" before "${then}"`);
    expect(fault.remedy).toContain(`"${then}" comes before "${first}"`);
    expect(fault.remedy).toContain(part);
    expect(error.message).toMatch(/^steps\/rack\/item\.yaml:77:5 order: found .* would be right: leave this out: .*would be in the way/);
  });

  it('is refused with the whole chain when steps lie between', () => {
    const { remedy } = onlyFault(refusal(wish('turn-deck', 'lay-frame')));
    expect(remedy).toContain('"lay-frame" comes before "wrap-side:left", or deck-1/panel would be in the way');
    expect(remedy).toContain('"wrap-side:left" comes before "turn-deck"');
  });

  it('stops the whole plan', () => {
    expect(() => planItem(model, rackWishing(wish('pin-posts:front', 'push-posts:front')).order, solids)).toThrow(FaultError);
  });

  it('is told apart from a good one beside it by its line', () => {
    const fault = onlyFault(refusal(wish('brace:left', 'brace:back'), wish('wrap-side:front', 'lay-frame')));
    expect(fault.position.line).toBe(80);
  });
});

describe('a wish that names no step', () => {
  it.each([['wrap-side:top', 'lay-frame', 'order.first'], ['lay-frame', 'glue', 'order.then']])('%s before %s: the field is told, and the keys there are', (first, then, field) => {
    const fault = onlyFault(refusal(wish(first, then)));
    expect(fault.field).toBe(field);
    expect(fault.found).toBe(`"${field === 'order.first' ? first : then}"`);
    for (const key of keys(usual)) expect(fault.remedy).toContain(key);
    expect(fault.position.line).toBe(77);
  });
});

describe('wishes in a circle', () => {
  it('of two, straight against each other, are refused when the file is read', () => {
    expect(() => rackWishing(wish('pin-middle:left', 'pin-ends:left'), wish('pin-ends:left', 'pin-middle:left'))).toThrow(FaultError);
  });

  it('closed by what geometry asks are refused at the later one, each being fine alone', () => {
    const [one, other] = [wish('pin-ends:right', 'wrap-side:left'), wish('pin-ends:left', 'wrap-side:right')];
    expect(() => wishing(one)).not.toThrow();
    expect(() => wishing(other)).not.toThrow();
    const fault = onlyFault(refusal(one, other));
    expect(fault.position.line).toBe(80);
    expect(fault.remedy).toContain('(designer)');
    expect(fault.remedy).toContain('deck-1/panel-pin-left-1');
  });

  it('that reach the planner by another way than a file are refused as well', () => {
    const position = { file: 'a.yaml', line: 1, column: 1 };
    const both = [wish('pin-middle:left', 'pin-ends:left'), wish('pin-ends:left', 'pin-middle:left')].map((each) => ({ ...each, because: '', position }));
    expect(() => orderJobs(usual.jobs, must, both, rulesFor(model.pattern))).toThrow(FaultError);
  });
});

describe('wishes that no workshop can follow', () => {
  it.each([
    ['lay-frame', 'cut-blank'],
    ['half-cut', 'cut-blank'],
    ['wrap-side:left', 'crease'],
    ['wrap-side:left', 'half-cut'],
    ['pin-ends:left', 'punch-holes'],
    ['push-tubes:short', 'cut-tubes'],
    ['stand-decks', 'lay-frame'],
    ['stand-decks', 'turn-deck'],
    ['pin-posts:front', 'drill:front'],
    ['stand-up', 'pin-posts:front'],
    ['turn-item', 'drill:front'],
    ['push-posts:back', 'turn-item'],
  ])('%s before %s is refused', (first, then) => {
    expect(() => wishing(wish(first, then))).toThrow(FaultError);
  });
});
