import { beforeAll, describe, expect, it } from 'vitest';
import { lineDrawing, newLineCaches, stepPictures, type Body, type Picture } from '../../src/draw/index.ts';
import type { Solids } from '../../src/model/index.ts';
import type { Step } from '../../src/plan/index.ts';
import { stepScene, type View } from '../../src/scene/index.ts';
import { sharedSolids } from '../support/kernel.ts';
import { drawnSizes } from '../support/chosen.ts';
import { modelOf } from '../support/items.ts';
import { sampled } from '../support/samples.ts';
import { figureFaults, fillFaults, hiddenParts, labelFaults, smallFaults } from '../support/pictures.ts';
import { cutsOnce, planOnce } from '../support/plans.ts';

let solids: Solids;
beforeAll(async () => { solids = await sharedSolids(); });

describe.each(drawnSizes)('pictures of the steps of the $name', ({ name, item, size }) => {
  it('keep labels apart and on the picture, figures high and level enough, fill their field, and show every new part, large enough or ringed', async () => {
    const model = modelOf(item, size);
    const plan = planOnce(model, item.order);
    const caches = newLineCaches();
    const givens = { model, plan, cuts: await cutsOnce(model), solids, draw: (bodies: readonly Body[], view: View) => lineDrawing(bodies, view, { caches }) };
    const faults = sampled(plan.steps, `steps of ${name}`, 14, ({ key }) => key).flatMap((step) => {
      const pictures = stepPictures(givens, step);
      const scene = stepScene(model, step, solids);
      return [...(scene === null ? [] : smallFaults(step, scene, pictures)), ...pictures.flatMap((picture) => [...labelFaults(picture), ...figureFaults(picture), ...fillFaults(picture)]), ...(step.standing.name === 'bench' ? [] : hiddenParts(step, pictures))];
    });
    expect(faults).toEqual([]);
  });
});

describe('the checks themselves', () => {
  const at = (x: number, y: number) => ({ x, y, width: 10, height: 5 });
  const picture: Picture = { of: { what: 'pattern', pattern: 0 }, id: 'p', svg: '<svg/>', width: 100, height: 50, labels: [], newPartShares: { far: 0.1, near: 0.9 } };

  it('notice labels that overlap and labels off the paper', () => {
    expect(labelFaults({ ...picture, labels: [at(0, 0), at(10, 0), at(90, 45)] })).toEqual([]);
    expect(labelFaults({ ...picture, labels: [at(0, 0), at(9, 4)] })).toEqual(['p: two labels overlap']);
    expect(labelFaults({ ...picture, labels: [at(91, 0), at(-1, 20)] })).toHaveLength(2);
  });

  it('notice a new part that shows too little, unless a further picture shows one of its kind', () => {
    const step = { number: 3, key: 'k', newParts: [{ kind: 'joint', ids: ['far'] }, { kind: 'post', ids: ['near'] }] } as unknown as Step;
    expect(hiddenParts(step, [picture])).toEqual(['3 k: joint far shows 0.10']);
    expect(hiddenParts(step, [picture, { ...picture, newPartShares: { far: 0.6 } }])).toEqual([]);
  });
});
