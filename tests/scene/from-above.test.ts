import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../src/draw/index.ts';
import { blocksFromAbove, type Mark } from '../../src/scene/index.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOnce } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

const lengthsOf = (marks: readonly Mark[]): readonly { readonly told: number; readonly drawn: number }[] => marks.flatMap((mark) =>
  (mark.mark === 'length' && mark.told.as === 'length' ? [{ told: mark.told.mm, drawn: Math.hypot(mark.to[0] - mark.from[0], mark.to[1] - mark.from[1]) }] : []));

describe('blocks seen from above', () => {
  it.each(everySize.map(({ item, size }) => ({ name: `${item.name} ${size}`, item, size })))('stand where their figures say, in sight, $name', ({ item, size }) => {
    const model = modelOf(item, size);
    const plan = planOnce(model, item.order);
    for (const step of plan.steps) {
      const scene = blocksFromAbove(model, plan, step, solids);
      if (scene === null) continue;
      const blocks = scene.bodies.filter(({ kind, look }) => kind === 'tool' && look === 'new');
      expect(blocks.length).toBeGreaterThan(1);
      expect(scene.view.towardsEye).toEqual([0, 0, 1]);
      // Nothing hides a block whole.
      const { visibleShare } = lineDrawing(scene.bodies, scene.view);
      expect([step.number, blocks.filter(({ id }) => visibleShare(id) < 0.1)]).toEqual([step.number, []]);
      // Each figure once, and as long as it is drawn.
      const figures = lengthsOf(scene.marks);
      expect(new Set(figures.map(({ told }) => told)).size).toBe(figures.length);
      for (const { told, drawn } of figures) expect(Math.abs(told - drawn)).toBeLessThanOrEqual(0.5);
    }
  });
});
