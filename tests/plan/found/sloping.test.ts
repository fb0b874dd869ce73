import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { buildModel, loadSolids } from '../../../src/model/index.ts';
import { findPlan } from '../../../src/plan/found/plan.ts';
import { faultsOf } from '../../../src/plan/found/prove.ts';
import { structureFrom } from '../../support/structures.ts';

const solids = await loadSolids();
const item = structureFrom('sloping-shelf', readFileSync(new URL('./items/sloping-shelf.yaml', import.meta.url), 'utf8'));

// Friction of smooth plastic on glass fibre is about 0.2 (from memory): a shelf that slopes by 20° slides off.
it.each(['small', 'tall'])('a shelf that slopes is held or propped from when it is laid on until it is pinned (%s)', (size) => {
  const model = buildModel(item, size);
  const plan = findPlan(model, item.order, solids);
  expect(faultsOf(model, plan, solids)).toEqual([]);
  const laid = plan.steps.findIndex(({ does, newParts }) => does === 'lay-panel' && newParts.includes('slope'));
  const pinned = plan.steps.findIndex(({ does, moves }) => does === 'pin' && moves.some(({ closes }) => closes.some((each) => each.is === 'pin' && each.holds.includes('slope'))));
  expect(laid).toBeGreaterThan(0);
  expect(pinned).toBeGreaterThan(laid);
  const between = plan.steps.slice(laid + 1, pinned + 1);
  expect(between.filter(({ held, props }) => ![...held, ...props].some((body) => body.includes('slope'))).map(({ key }) => key)).toEqual([]);
});
