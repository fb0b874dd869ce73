import { describe, expect, it } from 'vitest';
import { FORMATS } from '../../src/draw/formats.ts';
import { brakesLocked, brakesSet, endsTried, type FlatGivens } from '../../src/draw/work-kit/index.ts';
import { planTubes } from '../../src/cut/index.ts';
import type { Step } from '../../src/plan/index.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';

const firstSizes = everySize.filter(({ item, size }) => item.sizes[0]?.name === size);

describe.each(firstSizes)('ends fitted to the $name', ({ item, size }) => {
  const model = modelOf(item, size);
  const plan = planOf(item, model.size);
  const fittings = ({ newParts }: Step) => model.parts.flatMap(({ id, shape }) => (shape.form === 'fitting' && newParts.some(({ ids }) => ids.includes(id)) ? [shape.fitting] : []));
  const isBraked = (step: Step): boolean => fittings(step).some((fitting) => fitting.is === 'castor' && fitting.brake);
  const fits = ({ action }: Step): boolean => action === 'fit-end';

  it('are tried at the first step that fits one, once; wood and tape are at hand there', async () => {
    const givens: FlatGivens = { model, plan, cuts: await planTubes(model), papers: FORMATS.page };
    const first = plan.steps.find(fits);
    expect(plan.steps.map((step) => endsTried(givens, step).length)).toEqual(plan.steps.map((step) => Number(step === first)));
    for (const step of plan.steps.filter(fits)) expect([step.key, step.tools.filter((tool) => tool === 'block' || tool === 'sticky-tape')]).toEqual([step.key, ['block', 'sticky-tape']]);
  });

  it('have their brakes set where castors with one are fitted, and locked where the work is stood up on them, and nowhere else', async () => {
    const givens: FlatGivens = { model, plan, cuts: await planTubes(model), papers: FORMATS.page };
    expect(plan.steps.map((step) => brakesSet(givens, step).length)).toEqual(plan.steps.map((step) => Number(isBraked(step))));
    const fitted = plan.steps.findIndex(isBraked);
    const stoodUp = plan.steps.filter(({ action }) => action === 'stand-up');
    expect(stoodUp.map((step) => brakesLocked(givens, step).length)).toEqual(stoodUp.map((step) => Number(fitted !== -1 && plan.steps.indexOf(step) > fitted)));
    // Work that gets such castors is stood up on them later.
    expect(fitted === -1 || stoodUp.some((step) => plan.steps.indexOf(step) > fitted)).toBe(true);
  });
});

it('some item has castors with brakes, and some ends without', () => {
  const kinds = firstSizes.flatMap(({ item, size }) => modelOf(item, size).parts.flatMap(({ shape }) => (shape.form === 'fitting' ? [shape.fitting.is === 'castor' && shape.fitting.brake ? 'braked' : shape.fitting.is] : [])));
  expect(new Set(kinds)).toEqual(new Set([...kinds, 'braked', 'castor', 'foot-plate', 'end-cap']));
});
