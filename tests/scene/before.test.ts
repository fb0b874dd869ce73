import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../src/draw/index.ts';
import { planItem, type Step } from '../../src/plan/index.ts';
import { blocksFetched, proppedScene, sleeveEnds, stepScene, unproppedScene, wayUpScenes } from '../../src/scene/index.ts';
import type { Scene } from '../../src/scene/index.ts';
import { everySize, modelOf } from '../support/items.ts';
import { rackModel, solids } from '../support/rack.ts';
import { asTurn, between } from './poses.ts';

const model = rackModel('standard');
const plan = planItem(model, [], solids);
const { steps } = plan;
const first = (action: Step['action']): Step => {
  const step = steps.find((each) => each.action === action);
  if (step === undefined) throw new Error(`no step that does ${action}`);
  return step;
};

describe('joints on a tube', () => {
  const step = first('push-tubes');
  const told = wayUpScenes(model, step, solids);

  it('are shown as they must be, and with one a quarter turn off', () => {
    const off = told?.right.bodies.flatMap((body) => {
      const other = told.wrong.bodies.find(({ id }) => id === body.id);
      const { angle } = asTurn(between(body.pose, other?.pose ?? []));
      return angle < 1e-6 ? [] : [{ id: body.id, angle }];
    }) ?? [];
    expect(off).toHaveLength(1);
    expect(off[0]?.angle).toBeCloseTo(Math.PI / 2, 6);
    expect(told?.right.bodies.filter(({ look }) => look === 'new').map(({ id }) => id)).toEqual([off[0]?.id]);
  });

  it('are told so only where a step brings several', () => {
    expect(wayUpScenes(model, first('slide-on'), solids)).toBeNull();
    expect(wayUpScenes(model, first('drill'), solids)).toBeNull();
  });
});

describe('posts on blocks', () => {
  it('are shown by themselves, so that each block is seen', () => {
    const scene = proppedScene(model, plan, first('slide-on'), solids);
    if (scene === null) throw new Error('nothing is propped');
    const { visibleShare } = lineDrawing(scene.bodies, scene.view);
    const blocks = scene.bodies.filter(({ kind }) => kind === 'tool');
    expect(blocks).toHaveLength(4);
    for (const { id } of blocks) expect(visibleShare[id]).toBeGreaterThan(0.2);
    expect(scene.marks.flatMap((mark) => (mark.mark === 'label' ? [mark.told] : []))).toEqual([{ as: 'times', value: 4 }]);
  });

  it('are told how many and how high at the step that puts them under, and how they leave before the next', () => {
    const step = first('slide-on');
    const next = steps.find(({ number }) => number === step.number + 1) ?? step;
    expect(blocksFetched(model, plan, step, solids)).toEqual([{ high: model.kit.tube.outsideDiameter, count: 4 }]);
    expect(blocksFetched(model, plan, next, solids)).toEqual([]);
    expect(unproppedScene(model, plan, step, solids)).toBeNull();
    const left = unproppedScene(model, plan, next, solids);
    expect(left?.bodies.filter(({ kind }) => kind === 'tool')).toHaveLength(4);
    expect(left?.marks.filter(({ mark }) => mark === 'arrow')).toHaveLength(4);
  });

  it('stay clear of where the first joint stops', () => {
    expect(proppedScene(model, plan, first('drill'), solids)).toBeNull();
    const [stop] = sleeveEnds(model, first('slide-on').props.flat()[0] ?? '');
    // A block is 70 mm long and stands flush with the foot.
    expect(stop).toBeGreaterThanOrEqual(70);
  });
});

describe('work that is pushed over posts', () => {
  it('tells how far from the foot the first one stops, and enlarges that place', () => {
    const step = first('slide-on');
    const marks = stepScene(model, step, solids)?.marks ?? [];
    const [stop] = sleeveEnds(model, step.props.flat()[0] ?? '');
    expect(marks.flatMap((mark) => (mark.mark === 'length' ? [mark.told] : []))).toEqual([{ as: 'length', mm: stop }]);
    expect(marks.filter(({ mark }) => mark === 'detail')).toHaveLength(1);
  });
});

describe.each(everySize)('blocks of the $name', ({ item, size }) => {
  it('stand in the picture of every step that is propped, are fetched once, and leave before work that stands on none', () => {
    const own = modelOf(item, size);
    const made = planItem(own, item.order, solids);
    const blocks = (scene: Scene | null): number => scene?.bodies.filter(({ kind, id }) => kind === 'tool' && id.startsWith('block-')).length ?? 0;
    let there = 0;
    for (const step of made.steps) {
      const fetched = blocksFetched(own, made, step, solids).reduce((sum, { count }) => sum + count, 0);
      const left = blocks(unproppedScene(own, made, step, solids));
      if (left > 0) expect([step.key, left]).toEqual([step.key, there]);
      there = left > 0 ? fetched : Math.max(there, fetched);
      expect([step.key, blocks(stepScene(own, step, solids))]).toEqual([step.key, step.props.length === 0 ? 0 : there]);
      expect([step.key, blocks(proppedScene(own, made, step, solids))]).toEqual([step.key, fetched]);
      expect([step.key, step.tools.includes('block')]).toEqual([step.key, step.props.length > 0]);
      if (step.props.length === 0) there = 0;
    }
    // None stands on blocks when it is done.
    expect(made.steps.at(-1)?.props).toEqual([]);
  });
});
