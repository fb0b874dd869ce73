import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../src/draw/index.ts';
import { chained, jointPorts, placed, type Model, type Vec3 } from '../../src/model/index.ts';
import { isSetOnItsFeet, PEGS_CLEAR, type Footing, type Step } from '../../src/plan/index.ts';
import { DRILL_CLEAR, PINS_CLEAR } from '../../src/plan/footing/pegs.ts';
import { blocksFetched, freedScenes, proppedScenes, rolledScenes, rolledSteps, setDownScene, sleeveEnds, stepScene, unproppedScene, wayUpScenes } from '../../src/scene/index.ts';
import type { Scene, SceneBody } from '../../src/scene/index.ts';
import { blocksOf, boxOfBlock, type Block } from '../../src/scene/kit/blocks.ts';
import { boxRound } from '../../src/scene/kit/extent.ts';
import { stageHand, turnedBy } from '../../src/scene/kit/index.ts';
import { isOnBlocks } from '../../src/scene/kit/props.ts';
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

/** The pins that a step drills for or pushes in. */
const driven = ({ connections }: Model, { drillsFor, newParts }: Step): readonly string[] =>
  connections.flatMap((each) => (each.is === 'pin' && (drillsFor.includes(each.pin) || newParts.some(({ ids }) => ids.includes(each.pin))) ? [each.pin] : []));

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
  // The pegs of what is pushed over them stay clear of the floor.
  const high = model.kit.joint.studReach - model.kit.tube.outsideDiameter / 2 + PEGS_CLEAR;

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
    expect(lengths).toEqual([high, Math.round(box.max[0] - inner)]);
    expect(level.marks.flatMap((mark) => (mark.mark === 'label' ? [mark.told] : []))).toEqual([{ as: 'times', value: 4 }]);
    const { visibleShare } = lineDrawing(level.bodies, level.view);
    expect(level.bodies.filter(({ id }) => id.startsWith('block-') && visibleShare(id) > 0.2)).toHaveLength(2);
  });

  it('are told how many and how high at the step that puts them under; those in the way of the joints leave in it, and come back to the other ends at the next', () => {
    const step = first('slide-on');
    const next = steps.find(({ number }) => number === step.number + 1) ?? step;
    expect(blocksFetched(model, plan, step, solids)).toEqual([{ high, most: null, count: 4 }]);
    expect(blocksFetched(model, plan, next, solids)).toEqual([expect.objectContaining({ high, count: 2 })]);
    expect(unproppedScene(model, plan, step, solids)).toBeNull();
    const [freed, following] = freedScenes(model, step, solids);
    expect(freed?.bodies.filter(({ kind, look }) => kind === 'tool' && look !== 'present')).toHaveLength(2);
    // The first of what comes has its arrow too.
    expect(freed?.marks.filter(({ mark }) => mark === 'arrow')).toHaveLength(3);
    expect(freed?.marks.flatMap((mark) => (mark.mark === 'label' ? [mark.told] : []))).toEqual([{ as: 'times', value: 2 }]);
    // The next one comes to bars that stand on the first, without blocks there.
    expect(following?.bodies.filter(({ kind }) => kind === 'tool')).toHaveLength(2);
    expect(following?.bodies.filter(({ look }) => look === 'new').map(({ partId }) => partId)).not.toEqual(freed?.bodies.filter(({ look, kind }) => look === 'new' && kind !== 'tool').map(({ partId }) => partId));
    // At the next step blocks come under the ends from which they left; one behind the decks is drawn beside them, and those at the feet stay.
    expect(unproppedScene(model, plan, next, solids)).toBeNull();
    const [back] = proppedScenes(model, plan, next, solids);
    expect(back?.bodies.flatMap(({ kind, look }) => (kind === 'tool' ? [look] : [])).sort()).toEqual(['new', 'new', 'present', 'present']);
    const shown = back?.bodies.flatMap(({ partId }) => partId ?? []) ?? [];
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

const isTurn = ({ motions }: Step): boolean => motions.some(({ kind }) => kind === 'turn');

/** The corners of a body's mesh, as it lies. */
const cornersOf = ({ mesh: { positions }, pose }: SceneBody): readonly Vec3[] =>
  Array.from({ length: positions.length / 3 }, (_, at) => placed(pose, [positions[3 * at] ?? 0, positions[3 * at + 1] ?? 0, positions[3 * at + 2] ?? 0]));

/** Low blocks are of one kind with all of their height. */
const kindOf = ({ high }: Footing): number => high;

/** Whether the underside of a joint's sleeves and sockets, as they lie, is where a block ends. */
function isUnderSleeve(own: Model, step: Step, { holds, at, shape }: Block): boolean {
  const [joint] = own.parts.filter(({ id }) => holds.includes(id));
  const ports = joint === undefined ? null : jointPorts(joint.shape);
  if (joint === undefined || ports === null) return false;
  return Math.abs(placed(chained(step.standing.pose, joint.pose), [0, 0, 0])[2] - ports.outside / 2 - at[2] - shape.thickness) < 1;
}

describe.each(everySize)('blocks of the $name', ({ item, size }) => {
  const own = modelOf(item, size);
  const made = planOnce(own, item.order);
  const blocks = (scene: Scene | null | undefined): number => scene?.bodies.filter(({ kind, id }) => kind === 'tool' && id.startsWith('block-')).length ?? 0;
  const handsIn = (scene: Scene | null): number => scene?.marks.filter(({ mark }) => mark === 'hand').length ?? 0;
  const leaving = (scene: Scene | null): number => scene?.bodies.filter(({ kind, look }) => kind === 'tool' && look !== 'present').length ?? 0;

  it('stand in the picture of every step that is on blocks, are fetched once, and leave in it or before work that does without', () => {
    let there = 0;
    for (const step of made.steps) {
      const fetched = blocksFetched(own, made, step, solids).reduce((sum, { count }) => sum + count, 0);
      const [coming, level] = proppedScenes(own, made, step, solids);
      expect([step.key, step.tools.includes('block')]).toEqual([step.key, step.props.length + step.footing.after.length > 0 || WORK[step.action].tools.includes('block')]);
      if (isTurn(step)) {
        const { before, after } = step.footing;
        const kindsMore = [...new Set(after.map(kindOf))].reduce((sum, kind) => sum + Math.max(0, after.filter((each) => kindOf(each) === kind).length - before.filter((each) => kindOf(each) === kind).length), 0);
        expect([step.key, there, fetched, coming]).toEqual([step.key, before.length, kindsMore, undefined]);
        // Of those that it lay on, pale, those behind it are left out.
        const shown = stepScene(own, step, solids)?.bodies.filter(({ id }) => id.startsWith('block-')) ?? [];
        expect([step.key, shown.filter(({ look }) => look !== 'pale').length]).toEqual([step.key, after.length]);
        expect(shown.filter(({ look }) => look === 'pale').length).toBeLessThanOrEqual(before.length);
        there = after.length;
        continue;
      }
      const left = leaving(unproppedScene(own, made, step, solids));
      const freed = leaving(freedScenes(own, step, solids)[0] ?? null);
      const during = there - left + fetched;
      expect([step.key, blocks(coming), blocks(level)]).toEqual([step.key, fetched === 0 ? 0 : during, fetched === 0 ? 0 : during]);
      expect([step.key, blocks(stepScene(own, step, solids))]).toEqual([step.key, during - freed]);
      there = during - freed;
    }
    // None stands on blocks when it is done.
    expect(there).toBe(0);
  });

  it('keep pegs, pins that are driven in and the drill clear of the floor, and are no higher than that, unless it is held on edge', () => {
    const nearest = new Map<string, number>();
    for (const step of made.steps.filter(({ footing, motions }) => footing.before.length > 0 && motions.every(({ kind }) => kind !== 'turn'))) {
      const hand = stageHand(own, step, solids);
      const [floor = Number.NaN, ...others] = blocksOf(hand, step).map(({ at }) => at[2]);
      for (const other of others) expect(other).toBeCloseTo(floor, 6);
      const moving = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []));
      const low = boxRound(step.present.filter((id) => !moving.includes(id)).map((id) => hand.body(id, 'present'))).min[2];
      const gaps = [low - floor - PEGS_CLEAR, ...driven(own, step).map((pin) => {
        const body = hand.body(pin, 'present');
        const isDown = Math.abs(turnedBy(body.pose, [0, 0, 1])[2]) > 0.9;
        return (isDown ? boxRound([body]).min[2] - PINS_CLEAR : placed(body.pose, [0, 0, 0])[2] - DRILL_CLEAR) - floor;
      })];
      expect([step.key, gaps.filter((gap) => gap < -1e-6)]).toEqual([step.key, []]);
      const blocks = JSON.stringify(step.footing.before);
      nearest.set(blocks, Math.min(nearest.get(blocks) ?? Infinity, ...gaps));
      // Whole millimetres, which are told.
      for (const { high } of step.footing.before) expect(Number.isInteger(high)).toBe(true);
    }
    expect([...nearest.values()].filter((gap) => Math.abs(gap) > 1e-6)).toEqual([]);
  });

  it('are under what is set in to be wrapped next when it comes', () => {
    made.steps.forEach((step, index) => {
      const moving = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []));
      const held = made.steps[index + 1]?.props.filter((ids) => ids.every((id) => moving.includes(id))) ?? [];
      if (step.action === 'set-in' && held.length > 0) expect([step.key, step.props]).toEqual([step.key, held]);
    });
  });

  it('are not all that holds work: the hands of the second person are drawn on what he holds, and one of each where two turn it', () => {
    for (const step of made.steps) {
      const scene = stepScene(own, step, solids);
      const hands = isTurn(step) ? handsIn(scene) : scene?.marks.filter((mark) => mark.mark === 'hand' && mark.person === 2 && step.held.length > 0).length ?? 0;
      // Where one hand is elsewhere, or the work leaves no room for two, it is one.
      const most = isTurn(step) ? 2 : 2 * step.held.length;
      // A small panel has no room for a hand; how its first hole is held has pictures of its own.
      const least = step.detail.on === 'plate' ? 0 : Math.min(1, most);
      expect([step.key, hands >= least && hands <= most]).toEqual([step.key, true]);
    }
  });

  it('are seen level with their heights where work is turned onto them', () => {
    for (const [index, step] of made.steps.entries()) {
      const scene = setDownScene(own, made, step, solids);
      const { after } = step.footing;
      expect([step.key, scene !== null]).toEqual([step.key, isTurn(step) && after.length > 0 && index < made.steps.length - 1]);
      if (scene === null) continue;
      expect([step.key, blocks(scene)]).toEqual([step.key, after.length]);
      const told = scene.marks.flatMap((mark) => (mark.mark === 'length' && mark.told.as === 'length' ? [mark.told.mm] : []));
      expect([step.key, new Set(told)]).toEqual([step.key, new Set(after.map(({ high }) => high))]);
    }
  });

  it('are taken away, while the work is held, before it is set on its feet', () => {
    for (const step of made.steps.filter(isSetOnItsFeet)) {
      const away = unproppedScene(own, made, step, solids);
      expect([step.key, leaving(away), handsIn(away)]).toEqual([step.key, step.footing.before.length, 2]);
      expect(stepScene(own, step, solids)?.bodies.filter(({ id }) => id.startsWith('block-'))).toEqual([]);
    }
  });

  it('are followed by hands until cords hold the work upright, while it is turned as well', () => {
    for (const step of made.steps.filter(({ action }) => action === 'brace')) {
      expect([step.key, step.held, step.people]).toEqual([step.key, [step.present], 2]);
      const turns = rolledScenes(own, step, rolledSteps(own, made).get(step.number) ?? [], solids);
      expect([step.key, turns.map(handsIn)]).toEqual([step.key, turns.map(() => 2)]);
    }
  });

  it('stay under work until it is turned or put aside, and others come to them', () => {
    made.steps.forEach((step, index) => {
      const next = made.steps[index + 1];
      // Standing work is lifted onto blocks just to be drilled; what is knocked on stands on them until others come beside it.
      if (next === undefined || !next.present.some((id) => step.present.includes(id)) || (step.standing.name === 'upright' && step.footing.after.length > 0 && next.footing.before.length === 0) || (next.props.length > 0 && next.footing.before.length === 0)) return;
      expect([next.key, next.footing.before]).toEqual([next.key, expect.arrayContaining([...step.footing.after])]);
    });
  });

  it('have work on their tops or against a side: none carries nothing', () => {
    for (const step of made.steps.filter((step) => isOnBlocks(step) && !isTurn(step))) {
      const hand = stageHand(own, step, solids);
      for (const block of blocksOf(hand, step)) {
        const box = boxOfBlock(block);
        const bodies = block.holds.map((id) => hand.body(id, 'present'));
        const isAgainst = bodies.map((body) => boxRound([body])).some(({ min, max }) => ([0, 1] as const).every((axis) => min[axis] <= box.max[axis] + 1 && max[axis] >= box.min[axis] - 1) && min[2] < box.max[2] - 5);
        // A round tube lies on a block along a line.
        const isUnderTube = bodies.some((body) => hand.part(body.id).shape.form === 'tube' && Math.abs(boxRound([body]).min[2] - box.max[2]) < 1);
        // So does the sleeve of a joint, or a panel that is wrapped round a bar.
        const isUnderFooting = block.isFooting && (isUnderSleeve(own, step, block) || Math.abs(boxRound(bodies).min[2] - box.max[2]) < 1);
        expect([step.key, isAgainst || isUnderTube || isUnderFooting || restsOn(bodies, box)]).toEqual([step.key, true]);
      }
    }
  });

  it('stand in nothing, and in the way of nothing that moves', () => {
    for (const step of made.steps.filter((step) => isOnBlocks(step) && !isTurn(step))) {
      const hand = stageHand(own, step, solids);
      const moving = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts.map((id) => ({ id, by: turnedBy(step.standing.pose, motion.by) })) : []));
      for (const block of blocksOf(hand, step).filter(({ leavesEarly }) => !leavesEarly)) {
        const box = boxOfBlock(block);
        for (const id of [...step.present, ...step.props.flat()].filter((each) => !moving.some((other) => other.id === each))) {
          // Beside the peg of the joint whose sleeve lies on it.
          const boxes = block.holds.includes(id) && block.isFooting ? cornersOf(hand.body(id, 'present')).map((at) => ({ min: at, max: at })) : [boxRound([hand.body(id, 'present')])];
          expect([step.key, id, boxes.some(({ min, max }) => ([0, 1, 2] as const).every((axis) => min[axis] < box.max[axis] - 1 && max[axis] > box.min[axis] + 1))]).toEqual([step.key, id, false]);
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
