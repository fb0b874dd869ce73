import { describe, expect, it } from 'vitest';
import { cachedDrawer } from '../../src/draw/index.ts';
import { FORMATS } from '../../src/draw/formats.ts';
import { composeOnFeet } from '../../src/draw/picture/index.ts';
import { onFeetOf } from '../../src/scene/index.ts';
import { boxRound } from '../../src/scene/kit/extent.ts';
import { outside, pointsOutside } from '../draw/flat/inspect.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { workSizes } from '../support/chosen.ts';
import { planOf } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

const draw = cachedDrawer();

describe.each(workSizes)('the feet of $name', ({ item, size }) => {
  const [model, plan] = [modelOf(item, size), planOf(item, size)];
  const looked = plan.steps.flatMap((step) => {
    const feet = onFeetOf(model, plan, step, solids);
    return feet === null ? [] : [{ step, feet }];
  });

  it('are looked at where it is stood up and no cords draw it plumb, with no more than hands', () => {
    const hasCords = model.parts.some(({ kind }) => kind === 'cable');
    const stands = plan.steps.filter(({ action }) => action === 'stand-up');
    expect(looked.map(({ step }) => step.number)).toEqual(hasCords ? [] : stands.map(({ number }) => number));
    expect(stands.map(({ tools, check }) => [tools.includes('plumb-line'), tools.includes('tape'), check?.name])).toEqual(stands.map(() => [hasCords, hasCords, hasCords ? 'rack-upright' : 'feet-stand']));
  });

  it('stand on the floor, the one at the right end shown off it', () => {
    for (const { feet: { bodies, floor, foot } } of looked) {
      const boxes = bodies.map((body) => boxRound([body])).filter(({ min }) => min[2] - floor < 3);
      expect(boxes.length).toBeGreaterThanOrEqual(2);
      expect(Math.max(...boxes.map(({ max }) => max[0]))).toBeCloseTo(foot[1], 6);
    }
  });

  it.each(['page', 'small'] as const)('are drawn within the paper of a %s', (format) => {
    for (const { feet } of looked) {
      const picture = composeOnFeet(feet, FORMATS[format].bench, draw);
      expect([outside(picture), pointsOutside(picture), picture.height <= FORMATS[format].most]).toEqual([[], [], true]);
    }
  });
});

it('some item is looked at', () => {
  const [model, plan] = [modelOf(itemNamed('bed')), planOf(itemNamed('bed'), 'nap')];
  expect(plan.steps.filter((step) => onFeetOf(model, plan, step, solids) !== null)).toHaveLength(1);
});
