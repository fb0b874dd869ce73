import { describe, expect, it } from 'vitest';
import { FORMATS } from '../../src/draw/formats.ts';
import { socketsFitted } from '../../src/draw/work-kit/index.ts';
import { planTubes } from '../../src/cut/index.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';
import { texts } from './flat/inspect.ts';

const firstSizes = everySize.filter(({ item, size }) => item.sizes[0]?.name === size);

describe.each(firstSizes)('tubes in the sockets of the $name', ({ item, size }) => {
  it('are tried by hand at the first step that pushes one home, and at no other', async () => {
    const model = modelOf(item, size);
    const [plan, cuts] = [planOf(item, model.size), await planTubes(model)];
    const drawn = plan.steps.map((step) => socketsFitted({ model, plan, cuts, papers: FORMATS.page }, step).length);
    const pushing = plan.steps.map(({ motions }) => motions.some((motion) => motion.kind === 'slide' && motion.closes.some(({ is }) => is === 'socket')));
    const first = pushing.indexOf(true);
    expect(first).toBeGreaterThan(-1);
    expect(drawn).toEqual(pushing.map((pushes, index) => (index === first ? 2 : Number(pushes))));
    const step = plan.steps[first];
    if (step === undefined) throw new Error('nothing is pushed');
    expect(step.tools).toContain('sticky-tape');
    expect(socketsFitted({ model, plan, cuts, papers: FORMATS.page }, step).map(texts)[1]).toEqual(['3', '2', '3']);
  });
});
