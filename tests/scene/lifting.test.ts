import { expect, it } from 'vitest';
import { dot, lengthOf, minus, placed, plus, times, type Model, type Vec3 } from '../../src/model/index.ts';
import { isTurn, type Step } from '../../src/plan/index.ts';
import { stepScene, unproppedScene, type Mark } from '../../src/scene/index.ts';
import { stageHand } from '../../src/scene/kit/index.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

type Hand = Extract<Mark, { mark: 'hand' }>;

const handsOf = (marks: readonly Mark[]): readonly Hand[] => marks.flatMap((mark) => (mark.mark === 'hand' ? [mark] : []));

/** How a bar is held in its joints: a post by driven pins in its sleeves, a bar between two joints on such posts, or by push fit alone. */
function heldBy({ connections }: Model, { present }: Step, bar: string): 'pins' | 'frame' | 'push fit' {
  const driven = connections.flatMap((each) => (each.is === 'pin' && present.includes(each.pin) ? [each.holds] : []));
  const isPinned = (post: string, joint: string): boolean => driven.some((holds) => holds.includes(post) && holds.includes(joint));
  const sleeves = connections.flatMap((each) => (each.is === 'sleeve' && isPinned(each.bar, each.joint) ? [each] : []));
  if (sleeves.some((sleeve) => sleeve.bar === bar)) return 'pins';
  const ends = connections.filter((each) => each.is === 'socket' && each.bar === bar && sleeves.some(({ joint }) => joint === each.joint));
  return ends.length === 2 ? 'frame' : 'push fit';
}

/** The tube whose face a hand is on; undefined where it is on none. */
function underHand(model: Model, step: Step, { at }: Hand): string | undefined {
  const stage = stageHand(model, step, solids);
  return step.present.find((id) => {
    const { shape } = stage.part(id);
    if (shape.form !== 'tube') return false;
    const [from, to] = [-0.5, 0.5].map((share) => placed(stage.pose(id), [share * shape.length, 0, 0])) as [Vec3, Vec3];
    const way = times(minus(to, from), 1 / shape.length);
    const along = dot(minus(at, from), way);
    return along > 0 && along < shape.length && Math.abs(lengthOf(minus(at, plus(from, times(way, along)))) - shape.outside / 2) < 1;
  });
}

/** Sizes whose posts have no bare places for two hands: they are held by bars between joints that are pinned to the posts. */
const SHORT = ['bed nap', 'stool low'];

it.each(everySize)('$name is turned over and stood up by bars that pins hold', ({ name, item, size }) => {
  const model = modelOf(item, size);
  const plan = planOf(item, size);
  const turns = plan.steps.filter(isTurn);
  expect(turns.length).toBeGreaterThan(0);
  for (const step of turns) {
    const hands = handsOf(stepScene(model, step, solids)?.marks ?? []);
    expect([step.key, hands.map(({ person }) => person)]).toEqual([step.key, [1, 2]]);
    const before = handsOf(unproppedScene(model, plan, step, solids)?.marks ?? []);
    const held = [...hands, ...before].map((hand) => heldBy(model, step, underHand(model, step, hand) ?? ''));
    expect([step.key, held]).toEqual([step.key, held.map((by) => (SHORT.includes(name) && by === 'frame' ? 'frame' : 'pins'))]);
  }
});
