import { describe, expect, it } from 'vitest';
import { dot, minus, placed, unit, type Vec3 } from '../../src/model/index.ts';
import { rolledScenes, rolledSteps, sleeveWayScenes, type Scene, type SceneBody } from '../../src/scene/index.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { planOnce } from '../support/plans.ts';
import { rackModel, solids } from '../support/rack.ts';

const model = modelOf(itemNamed('chair'), 'mark-2');
const plan = planOnce(model, itemNamed('chair').order);
const slid = plan.steps.filter(({ action }) => action === 'slide-on');

/** How far a body reaches from a place along a way, mm. */
const reach = ({ mesh: { positions }, pose }: SceneBody, from: Vec3, way: Vec3): number =>
  Math.max(...Array.from({ length: positions.length / 3 }, (_, at) => dot(minus(placed(pose, [positions[3 * at] ?? 0, positions[3 * at + 1] ?? 0, positions[3 * at + 2] ?? 0]), from), way)));

/** Of the joint that is slid on: how far it reaches ahead and behind, from the middle of what it holds, mm. */
function sleeveOf(scene: Scene): { readonly ahead: number; readonly behind: number } {
  const joint = scene.bodies.find(({ look }) => look === 'new');
  const arrow = scene.marks.find(({ mark }) => mark === 'arrow');
  if (joint === undefined || arrow?.mark !== 'arrow') throw new Error('nothing is slid on');
  const [from, to] = [arrow.path[0], arrow.path.at(-1)];
  if (from === undefined || to === undefined) throw new Error('an arrow without ends');
  const way = unit(minus(to, from));
  const middle = placed(joint.pose, [0, 0, 0]);
  return { ahead: reach(joint, middle, way), behind: reach(joint, middle, [-way[0], -way[1], -way[2]]) };
}

describe('a joint slid onto a level bar', () => {
  it('is shown with the long end of its sleeve where it must be, and the short one there crossed out', () => {
    expect(slid.length).toBeGreaterThan(0);
    const { sleeveBelow: long, sleeveAbove: short } = model.kit.joint;
    for (const step of slid) {
      const told = sleeveWayScenes(model, step, solids);
      if (told === null) throw new Error(`${step.key} does not tell it`);
      const [right, wrong] = [told.right, ...told.wrong].map(sleeveOf);
      if (right === undefined || wrong === undefined) throw new Error(`${step.key} does not tell it both ways`);
      expect([right.ahead, right.behind].map(Math.round).sort()).toEqual([long, short].sort());
      expect(wrong.ahead).toBeCloseTo(right.behind, 1);
      expect(wrong.behind).toBeCloseTo(right.ahead, 1);
      expect(told.right.bodies.filter(({ look }) => look === 'drawn')).toHaveLength(1);
    }
  });

  it('is told in the rack too, where a deck would lie upside down when it is stood up; and of no other work', () => {
    const rack = rackModel('standard');
    const told = planOnce(rack, []).steps.filter((step) => sleeveWayScenes(rack, step, solids) !== null);
    expect(told.map(({ action }) => action)).toEqual(['slide-on']);
  });
});

describe('a piece that is turned twice by hand', () => {
  it('has its turns numbered in their order, each with one arrow and its angle', () => {
    const rolled = rolledSteps(model, plan);
    const twice = slid.map((step) => rolledScenes(model, step, rolled.get(step.number) ?? [], solids)).filter((scenes) => scenes.length > 1);
    expect(twice.length).toBeGreaterThan(0);
    for (const scenes of twice) {
      expect(scenes.map(({ number }) => number)).toEqual(scenes.map((_, index) => index + 1));
      for (const { marks } of scenes) {
        expect(marks.filter(({ mark }) => mark === 'arrow')).toHaveLength(1);
        expect(marks.filter((mark) => mark.mark === 'label' && mark.told.as === 'angle')).toHaveLength(1);
      }
    }
  });
});
