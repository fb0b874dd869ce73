import { expect, it } from 'vitest';
import { seriesScenes } from '../../src/scene/index.ts';
import { boxRound, middleOf } from '../../src/scene/kit/extent.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOnce } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

it.each(everySize.map(({ item, size }) => ({ name: `${item.name} ${size}`, item, size })))('a panel laid on hinges is shown open, any other is not, $name', ({ item, size }) => {
  const model = modelOf(item, size);
  const hinged = new Set(model.connections.flatMap((each) => (each.is === 'hinge' ? [each.leaves[0]] : [])));
  for (const step of planOnce(model, item.order).steps.filter(({ action }) => action === 'lay-panel')) {
    const isLid = step.newParts.some(({ ids }) => ids.some((id) => hinged.has(id)));
    const scenes = seriesScenes(model, step, solids);
    expect(scenes.flatMap(({ marks }) => marks.flatMap((mark) => (mark.mark === 'label' ? [mark.told] : [])))).toEqual(isLid ? [{ as: 'angle', degrees: 45 }, { as: 'angle', degrees: 90 }] : []);
    // Farther open it reaches higher, and it is upright at last.
    const lids = scenes.map(({ bodies }) => bodies.filter(({ id }) => hinged.has(id)));
    const heights = lids.map((lid) => middleOf(boxRound(lid))[2]);
    expect(heights).toEqual(heights.toSorted((a, b) => a - b));
    const last = lids.at(-1);
    if (last !== undefined) {
      const { min, max } = boxRound(last);
      expect(Math.min(max[0] - min[0], max[1] - min[1])).toBeLessThan(20);
    }
  }
});
