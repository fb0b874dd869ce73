import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { failure } from '../../../src/cli/failure.ts';
import { buildModel, type Model } from '../../../src/model/index.ts';
import { groundOf } from '../../../src/plan/found/ground.ts';
import { findPlan } from '../../../src/plan/found/plan.ts';
import { faultsOf } from '../../../src/plan/found/prove.ts';
import { solve, startSearch } from '../../../src/plan/found/search.ts';
import { planItem } from '../../../src/plan/index.ts';
import { NoOrder } from '../../../src/plan/no-order.ts';
import { sharedSolids } from '../../support/kernel.ts';
import { changedText, structureFrom } from '../../support/structures.ts';

const solids = await sharedSolids();
const text = readFileSync(new URL('./items/coat-stand.yaml', import.meta.url), 'utf8');

/** The stand with its wall brackets so far (mm) under the arms. */
const standWith = (under: number): Model => buildModel(structureFrom('coat-stand', changedText(text, 'along: height - 200 mm', `along: height - ${under} mm`)), 'low');

function refused(model: Model): NoOrder {
  try {
    planItem(model, [], solids);
  } catch (error) {
    if (error instanceof NoOrder) return error;
    throw error;
  }
  throw new Error('an order was found');
}

describe('a coat stand told by points', () => {
  const item = structureFrom('coat-stand', text);

  it.each(item.sizes.map(({ name }) => name))('has an order with every motion free (%s)', (size) => {
    const model = buildModel(item, size);
    const plan = findPlan(model, [], solids);
    expect(faultsOf(model, plan, solids)).toEqual([]);
    expect(plan.steps.length).toBeLessThan(30);
    // All four caps are put on in one step, not one here and one there.
    const caps = plan.steps.filter(({ newParts }) => newParts.some((id) => model.connections.some((each) => each.is === 'cap' && each.cap === id)));
    expect(caps.map(({ does, moves }) => [does, moves.length])).toEqual([['fit', 4]]);
  });
});

describe('what is stuck', () => {
  const stuck = refused(standWith(45));

  it('is named with item and size, what it cannot go past, and what would help', () => {
    expect(stuck.message).toMatch(/^coat-stand low: joint e\.[01] cannot go where it belongs past wall\.[01]; would help: set wall\.[01] \d+ mm farther down, or leave one of them out$/);
  });

  it('comes off where the message says it would, and nowhere nearer', () => {
    const down = Number(/set wall\.[01] (\d+) mm/.exec(stuck.message)?.[1]);
    expect(down).toBeGreaterThan(20);
    const model = standWith(45 + down);
    expect(faultsOf(model, findPlan(model, [], solids), solids)).toEqual([]);
    expect(refused(standWith(45 + down - 1)).message).toContain('1 mm farther down');
  });

  it('fails a command as a finding does, in one line', () => {
    expect(failure(stuck)).toEqual({ told: `foldwright: ${stuck.message}`, code: 1 });
  });

  it('leaves no price that is no number', () => {
    const model = standWith(45);
    const search = startSearch(groundOf(model, model.connections, solids));
    solve(search, search.ground.finished, 1);
    const prices = [...search.known.values()].flatMap(({ builtIn, best }) => [...builtIn, ...best]);
    expect(prices.some((price) => price === Infinity)).toBe(true);
    expect(prices.filter(Number.isNaN)).toEqual([]);
  });
});

it('a search that is given up names parts that come off in any order', () => {
  const model = buildModel(structureFrom('coat-stand', text), 'low');
  const search = startSearch(groundOf(model, model.connections, solids));
  search.left = 5;
  expect(() => solve(search, search.ground.finished, 1)).toThrow(/every part comes off; would help: fewer parts that come off in any order, such as \w/);
});

it('the fault itself knows of no plans, so that a command starts without them', () => {
  const code = readFileSync(new URL('../../../src/plan/no-order.ts', import.meta.url), 'utf8');
  expect(code).not.toMatch(/\bimport\b/);
});
