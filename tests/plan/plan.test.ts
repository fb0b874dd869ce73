import { describe, expect, it } from 'vitest';
import { loadSolids, placed, type Model } from '../../src/model/index.ts';
import { WORK, type Step } from '../../src/plan/index.ts';
import { closeUpScene, momentScene, stepScene, type Mark, type Scene } from '../../src/scene/index.ts';
import type { Item } from '../../src/read/index.ts';
import { workSizes } from '../support/chosen.ts';
import { modelOf } from '../support/items.ts';
import { planOnce } from '../support/plans.ts';

const solids = await loadSolids();

const sceneOf = (model: Model, step: Step): Scene | null => stepScene(model, step, solids);
const fresh = (step: Step): readonly string[] => step.newParts.flatMap(({ ids }) => ids);
const moving = (step: Step): readonly string[] => step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []));
const arrows = ({ marks }: Scene): readonly Extract<Mark, { mark: 'arrow' }>[] => marks.filter((mark) => mark.mark === 'arrow');

interface Size {
  readonly name: string;
  readonly item: Item;
  readonly model: Model;
}

const demo = workSizes.map(({ item, size, name }): Size => ({ name, item, model: modelOf(item, size) }));

describe.each(demo)('the plan as it is told: $name', ({ item, model }) => {
  const { steps, batches } = planOnce(model, item.order);
  const built = steps.filter(({ standing }) => standing.name !== 'bench');

  it('brings every part once, each step with a key and a number of its own', () => {
    const brought = steps.flatMap(fresh);
    expect(new Set(brought).size).toBe(brought.length);
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, index) => index + 1));
    expect(new Set(steps.map(({ key }) => key)).size).toBe(steps.length);
  });

  it('announces only what is built more than once', () => {
    for (const batch of batches) {
      expect(batch.times).toBeGreaterThan(1);
      expect([batch.name, steps.some(({ run, times }) => run === batch.name && times === batch.times)]).toEqual([batch.name, true]);
    }
    expect(steps.every(({ run }) => run === null || batches.some((batch) => batch.name === run))).toBe(true);
  });

  it('shows all that is there, comes and moves, and has an arrow for all that is put together', () => {
    for (const step of built) {
      const scene = sceneOf(model, step);
      if (scene === null) throw new Error(`${step.key} has no scene`);
      const shown = new Set(scene.bodies.map(({ partId }) => partId));
      const all = [...step.present, ...fresh(step), ...moving(step)];
      expect([step.key, all.filter((id) => !shown.has(id))]).toEqual([step.key, []]);
      expect([step.key, new Set(scene.bodies.map(({ id }) => id)).size]).toEqual([step.key, scene.bodies.length]);
      expect([step.key, arrows(scene).length > 0]).toEqual([step.key, true]);
      for (const { path } of arrows(scene)) expect([step.key, path.flat().every(Number.isFinite)]).toEqual([step.key, true]);
    }
  });

  it('ends each move of a screen where the finished item has its parts', () => {
    for (const step of built.filter((each) => moving(each).length > 0)) {
      const bodies = momentScene(model, step, solids, 1)?.bodies ?? [];
      for (const id of moving(step)) {
        const at = bodies.find((body) => body.id === id)?.pose ?? [];
        const home = placed(step.standing.pose, placed(model.parts.find((part) => part.id === id)?.pose ?? [], [0, 0, 0]));
        placed(at, [0, 0, 0]).forEach((value, axis) => { expect(value).toBeCloseTo(home[axis] ?? NaN, 6); });
      }
    }
  });

  it('shows a prop wherever it asks for one to put parts together', () => {
    for (const step of built.filter(({ props, motions }) => props.length > 0 && motions.some(({ kind }) => kind === 'slide'))) {
      expect([step.key, sceneOf(model, step)?.bodies.some(({ id }) => id.startsWith('block-'))]).toEqual([step.key, true]);
    }
  });

  it('drills each hole before its pin, creases before it folds, saws before it pushes (common practice, no source)', () => {
    for (const step of steps.filter(({ action }) => action === 'pin-posts' || action === 'pin-panel')) {
      const pins = fresh(step).filter((id) => model.connections.some((each) => each.is === 'pin' && each.pin === id));
      const drilled = steps.filter(({ number }) => number < step.number).flatMap(({ drillsFor }) => drillsFor);
      expect([step.key, pins.every((pin) => drilled.includes(pin))]).toEqual([step.key, true]);
    }
    const first = (...actions: readonly string[]): number => steps.find(({ action }) => actions.includes(action))?.number ?? Infinity;
    const wraps = steps.filter(({ action }) => action === 'wrap-side').map(({ number }) => number);
    if (wraps.length > 0) expect(first('crease')).toBeLessThan(Math.min(...wraps));
    expect(first('cut-tubes')).toBeLessThan(first('push-tubes', 'push-posts', 'slide-on'));
  });

  it('has a close-up of every hole and pin that is worked on, from the pins that the step is about', () => {
    for (const step of built.filter(({ action }) => WORK[action].tools.includes('drill') || action === 'pin-posts' || action === 'pin-panel')) {
      const scene = closeUpScene(model, step, solids);
      expect([step.key, scene === null ? 0 : arrows(scene).length]).toEqual([step.key, step.drillsFor.length > 0 ? 1 : 2]);
    }
  });
});
