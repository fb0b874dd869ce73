import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../src/draw/index.ts';
import type { Step } from '../../src/plan/index.ts';
import { blocksFetched, freedScenes, proppedScenes, sleeveEnds, stepScene, unproppedScene, wayUpScenes } from '../../src/scene/index.ts';
import type { Scene } from '../../src/scene/index.ts';
import { blocksOf, boxOfBlock } from '../../src/scene/kit/blocks.ts';
import { boxRound } from '../../src/scene/kit/extent.ts';
import { stageHand, turnedBy } from '../../src/scene/kit/index.ts';
import { restsOn } from '../../src/scene/kit/resting.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOnce } from '../support/plans.ts';
import { WORK } from '../../src/work/facts.ts';
import { rackModel, solids } from '../support/rack.ts';
import { asTurn, between } from './poses.ts';

const model = rackModel('standard');
const plan = planOnce(model, []);
const { steps } = plan;
const first = (action: Step['action']): Step => {
  const step = steps.find((each) => each.action === action);
  if (step === undefined) throw new Error(`no step that does ${action}`);
  return step;
};

describe('joints on a tube', () => {
  const step = first('push-tubes');
  const told = wayUpScenes(model, step, solids);

  it('are shown as they must be, with one a quarter turn off, and with it on with its other socket', () => {
    const off = told?.wrong.map((wrong) => told.right.bodies.flatMap((body) => {
      const other = wrong.bodies.find(({ id }) => id === body.id);
      const { angle } = asTurn(between(body.pose, other?.pose ?? []));
      return angle < 1e-6 ? [] : [{ id: body.id, angle }];
    })) ?? [];
    expect(off.map((own) => own.map(({ angle }) => Math.round((180 * angle) / Math.PI)))).toEqual([[90], [180]]);
    expect(told?.right.bodies.filter(({ look }) => look === 'new').map(({ id }) => id)).toEqual([off[0]?.[0]?.id]);
    expect(off[1]?.[0]?.id).toBe(off[0]?.[0]?.id);
  });

  it('have the long end of their sleeve told where it must be, and where it must not', () => {
    const [, swapped] = told?.wrong ?? [];
    const lengths = [told?.right, swapped].map((scene) => scene?.marks.flatMap((mark) => (mark.mark === 'length' ? [mark] : [])) ?? []);
    expect(lengths.map((own) => own.map(({ told: figure }) => figure))).toEqual([[{ as: 'length', mm: model.kit.joint.sleeveBelow }], [{ as: 'length', mm: model.kit.joint.sleeveBelow }]]);
    const [up, down] = lengths.map(([own]) => Math.sign((own?.to[2] ?? 0) - (own?.from[2] ?? 0)));
    expect([up, down]).toEqual([1, -1]);
  });

  it('are told so only where a step brings several', () => {
    expect(wayUpScenes(model, first('slide-on'), solids)).toBeNull();
    expect(wayUpScenes(model, first('drill'), solids)).toBeNull();
  });
});

describe('posts on blocks', () => {
  const step = first('slide-on');
  const [coming, level] = proppedScenes(model, plan, step, solids);
  const bars = step.props.flat();

  it('are laid down on them, and it is told how far one is from the other', () => {
    expect(coming?.bodies.filter(({ kind }) => kind !== 'tool').map(({ id }) => id)).toEqual(bars);
    const arrows = coming?.marks.flatMap((mark) => (mark.mark === 'arrow' ? [mark.path] : [])) ?? [];
    expect(arrows).toHaveLength(2);
    for (const [from, to] of arrows) expect((from?.[2] ?? 0) - (to?.[2] ?? 0)).toBeGreaterThan(50);
    const [one = 0, other = 0] = bars.map((id) => model.parts.find((part) => part.id === id)?.pose[12] ?? 0);
    expect(coming?.marks.flatMap((mark) => (mark.mark === 'length' ? [mark.told] : []))).toEqual([{ as: 'length', mm: Math.abs(one - other) }]);
  });

  it('are seen level on them: the floor, how high they stand, how many blocks there are, and how far in from the bars\' ends', () => {
    if (level === undefined) throw new Error('nothing is propped');
    expect(level.view).toEqual({ towardsEye: [0, -1, 0], up: [0, 0, 1] });
    const hand = stageHand(model, step, solids);
    const blocks = blocksOf(hand, step).map(boxOfBlock);
    const [floor] = level.bodies.filter(({ id }) => id === 'floor').map((body) => boxRound([body]));
    expect(floor?.max[2]).toBeCloseTo(Math.min(...blocks.map(({ min }) => min[2])), 6);
    const box = boxRound(bars.map((id) => hand.body(id, 'present')));
    const inner = Math.max(...blocks.map(({ max }) => max[0]));
    const lengths = level.marks.flatMap((mark) => (mark.mark === 'length' && mark.told.as === 'length' ? [mark.told.mm] : []));
    expect(lengths).toEqual([model.kit.tube.outsideDiameter, Math.round(box.max[0] - inner)]);
    expect(level.marks.flatMap((mark) => (mark.mark === 'label' ? [mark.told] : []))).toEqual([{ as: 'times', value: 4 }]);
    const { visibleShare } = lineDrawing(level.bodies, level.view);
    expect(level.bodies.filter(({ id }) => id.startsWith('block-') && (visibleShare[id] ?? 0) > 0.2)).toHaveLength(2);
  });

  it('are told how many and how high at the step that puts them under; those in the way of the joints leave in it, the others before the next', () => {
    const step = first('slide-on');
    const next = steps.find(({ number }) => number === step.number + 1) ?? step;
    expect(blocksFetched(model, plan, step, solids)).toEqual([{ high: model.kit.tube.outsideDiameter, most: null, count: 4 }]);
    expect(blocksFetched(model, plan, next, solids)).toEqual([]);
    expect(unproppedScene(model, plan, step, solids)).toBeNull();
    const [freed, following] = freedScenes(model, step, solids);
    for (const left of [freed, unproppedScene(model, plan, next, solids)]) {
      expect(left?.bodies.filter(({ kind, look }) => kind === 'tool' && look !== 'present')).toHaveLength(2);
      // In it the first of what comes has its arrow too.
      expect(left?.marks.filter(({ mark }) => mark === 'arrow')).toHaveLength(left === freed ? 3 : 2);
      expect(left?.marks.flatMap((mark) => (mark.mark === 'label' ? [mark.told] : []))).toEqual([{ as: 'times', value: 2 }]);
    }
    // The next one comes to bars that stand on the first, without blocks there.
    expect(following?.bodies.filter(({ kind }) => kind === 'tool')).toHaveLength(2);
    expect(following?.bodies.filter(({ look }) => look === 'new').map(({ partId }) => partId)).not.toEqual(freed?.bodies.filter(({ look, kind }) => look === 'new' && kind !== 'tool').map(({ partId }) => partId));
    // The one behind the decks is drawn by hidden edges.
    expect(unproppedScene(model, plan, next, solids)?.bodies.flatMap(({ kind, look }) => (kind === 'tool' ? [look] : [])).sort()).toEqual(['hidden', 'new']);
    // The whole work stays.
    const shown = unproppedScene(model, plan, next, solids)?.bodies.flatMap(({ partId }) => partId ?? []) ?? [];
    expect(new Set(shown)).toEqual(new Set(next.present));
  });

  it('stay clear of where the first joint stops', () => {
    expect(proppedScenes(model, plan, first('drill'), solids)).toEqual([]);
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
  const own = modelOf(item, size);
  const made = planOnce(own, item.order);
  const blocks = (scene: Scene | null | undefined): number => scene?.bodies.filter(({ kind, id }) => kind === 'tool' && id.startsWith('block-')).length ?? 0;
  const leaving = (scene: Scene | null): number => scene?.bodies.filter(({ kind, look }) => kind === 'tool' && look !== 'present').length ?? 0;

  it('stand in the picture of every step that is propped, are fetched once, and leave in it or before work that stands on none', () => {
    let there = 0;
    for (const step of made.steps) {
      const fetched = blocksFetched(own, made, step, solids).reduce((sum, { count }) => sum + count, 0);
      const left = leaving(unproppedScene(own, made, step, solids));
      if (left > 0) expect([step.key, left]).toEqual([step.key, there]);
      const freed = leaving(freedScenes(own, step, solids)[0] ?? null);
      there = left > 0 ? fetched : Math.max(there, fetched);
      expect([step.key, blocks(stepScene(own, step, solids))]).toEqual([step.key, step.props.length === 0 ? 0 : there - freed]);
      const [coming, level] = proppedScenes(own, made, step, solids);
      expect([step.key, blocks(coming), blocks(level)]).toEqual([step.key, fetched, fetched]);
      expect([step.key, step.tools.includes('block')]).toEqual([step.key, step.props.length > 0 || WORK[step.action].tools.includes('block')]);
      there = step.props.length === 0 ? 0 : there - freed;
    }
    // None stands on blocks when it is done.
    expect(made.steps.at(-1)?.props).toEqual([]);
  });

  it('have work on their tops or against a side: none carries nothing', () => {
    for (const step of made.steps.filter(({ props }) => props.length > 0)) {
      const hand = stageHand(own, step, solids);
      for (const block of blocksOf(hand, step)) {
        const box = boxOfBlock(block);
        const bodies = block.holds.map((id) => hand.body(id, 'present'));
        const isAgainst = bodies.map((body) => boxRound([body])).some(({ min, max }) => ([0, 1] as const).every((axis) => min[axis] <= box.max[axis] + 1 && max[axis] >= box.min[axis] - 1) && min[2] < box.max[2] - 5);
        // A round tube lies on a block along a line.
        const isUnderTube = bodies.some((body) => hand.part(body.id).shape.form === 'tube' && Math.abs(boxRound([body]).min[2] - box.max[2]) < 1);
        expect([step.key, isAgainst || isUnderTube || restsOn(bodies, box)]).toEqual([step.key, true]);
      }
    }
  });

  it('stand in nothing, and in the way of nothing that moves', () => {
    for (const step of made.steps.filter(({ props }) => props.length > 0)) {
      const hand = stageHand(own, step, solids);
      const moving = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts.map((id) => ({ id, by: turnedBy(step.standing.pose, motion.by) })) : []));
      for (const block of blocksOf(hand, step).filter(({ leavesEarly }) => !leavesEarly)) {
        const box = boxOfBlock(block);
        for (const id of [...step.present, ...step.props.flat()].filter((each) => !moving.some((other) => other.id === each))) {
          const { min, max } = boxRound([hand.body(id, 'present')]);
          expect([step.key, id, ([0, 1, 2] as const).every((axis) => min[axis] < box.max[axis] - 1 && max[axis] > box.min[axis] + 1)]).toEqual([step.key, id, false]);
        }
        for (const other of blocksOf(hand, step).map(boxOfBlock)) {
          const meets = ([0, 1, 2] as const).every((axis) => other.min[axis] < box.max[axis] - 1 && other.max[axis] > box.min[axis] + 1);
          expect([step.key, meets]).toEqual([step.key, other.min.join() === box.min.join()]);
        }
        for (const { id, by } of moving.filter((each) => hand.part(each.id).kind !== 'joint-pin' && hand.part(each.id).kind !== 'wing-nut')) {
          for (const share of [0, 0.25, 0.5, 0.75, 1]) {
            const { min, max } = boxRound([hand.body(id, 'new', [-by[0] * share, -by[1] * share, -by[2] * share])]);
            const meets = ([0, 1, 2] as const).every((axis) => min[axis] < box.max[axis] && max[axis] > box.min[axis]);
            expect([step.key, id, share, meets]).toEqual([step.key, id, share, false]);
          }
        }
      }
    }
  });
});
