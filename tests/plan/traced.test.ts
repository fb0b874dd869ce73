import { describe, expect, it } from 'vitest';
import { WORK } from '../../src/plan/index.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { planOnce } from '../support/plans.ts';


describe('pieces alike', () => {
  const { steps } = planOnce(modelOf(itemNamed('rack'), 'standard'), []);

  it('are measured once: each further one takes the share of the minutes that tracing takes', () => {
    const marked = steps.filter(({ action }) => WORK[action].traced !== undefined);
    expect(marked.map(({ action }) => action)).toEqual(['cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes']);
    for (const { action, times, minutes } of marked) {
      const { minutes: all, traced = 1 } = WORK[action];
      const first = action === 'punch-holes' ? all / 2 : all;
      expect(times).toBe(4);
      expect(minutes).toBeCloseTo(first + 3 * traced * first, 9);
      expect(minutes).toBeLessThan(times * first);
    }
  });

  it('take as long each where nothing can be traced', () => {
    const creased = steps.find(({ action }) => action === 'crease');
    expect(creased?.minutes).toBe(4 * WORK.crease.minutes);
  });
});
