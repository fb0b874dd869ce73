import { expect, it } from 'vitest';
import { buildModel, loadSolids, type Part } from '../../../src/model/index.ts';
import { isFoldFree } from '../../../src/plan/found/boxes.ts';
import { findPlan } from '../../../src/plan/found/plan.ts';
import { faultsOf } from '../../../src/plan/found/prove.ts';
import { structureItem } from '../../support/structures.ts';

const solids = await loadSolids();
const item = structureItem('chest');
const model = buildModel(item, 'standard');
const plan = findPlan(model, item.order, solids);
const turned = plan.steps.filter(({ does }) => does === 'turn-up');
const closing = turned[2];
const tray = model.parts.find(({ id }) => id === 'tray') as Part;

it('a box is turned up tabs first, then the walls that carry them, then those that close it, each free', () => {
  expect(turned).toHaveLength(3);
  for (const { folds, folded } of turned) expect(isFoldFree(tray, folds, folded)).toBe(true);
});

/** The same with the walls that close it so much nearer to the middle that they would go through the corner tabs, mm. */
function narrower(part: Part, by: number): Part {
  if (part.shape.form !== 'folded') throw new Error('no folded panel');
  const flaps = part.shape.pattern.flaps.map((flap) => (flap.lugs.length > 0 ? flap : { ...flap, root: flap.root - by }));
  return { ...part, shape: { ...part.shape, pattern: { ...part.shape.pattern, flaps } } };
}

it('walls that would go through those that stand are told', () => {
  if (closing === undefined) throw new Error('no closing walls');
  expect(isFoldFree(narrower(tray, 20), closing.folds, closing.folded)).toBe(false);
  const spoilt = model.parts.map((part) => (part === tray ? narrower(part, 20) : part));
  expect(faultsOf({ parts: spoilt }, { ...plan, steps: [closing] }, solids)).toContainEqual({ key: closing.key, what: 'in-the-way', parts: ['tray'] });
});
