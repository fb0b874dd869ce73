import { describe, expect, it } from 'vitest';
import { buildModel, dot, lengthOf, type Vec3 } from '../../src/model/index.ts';
import { planItem } from '../../src/plan/index.ts';
import { isFromBehind, stepScene, STANDARD_VIEW, type Scene } from '../../src/scene/index.ts';
import { solids } from '../support/rack.ts';
import { structureItem } from '../support/structures.ts';

const model = buildModel(structureItem('chest'), 'standard');
const plan = planItem(model, structureItem('chest').order, solids);
const sceneOf = (step: (typeof plan.steps)[number]): Scene | null => stepScene(model, step, solids);

describe('from where a step is seen', () => {
  const pinned = plan.steps.filter(({ action }) => action === 'drill' || action === 'pin-posts');

  it('is from behind where all that it drills or pins is put in from there, and from before it else', () => {
    const behind = pinned.filter((step) => isFromBehind(model, step));
    expect(behind.length).toBeGreaterThan(0);
    expect(behind.length).toBeLessThan(pinned.length);
    for (const step of plan.steps) {
      const scene = sceneOf(step);
      if (scene === null) continue;
      expect([step.key, dot(scene.view.towardsEye, [0, -1, 0]) > 0]).toEqual([step.key, !isFromBehind(model, step)]);
    }
  });

  it('has every arrow of a pin or bit go away from the eye: nothing is put in from the far side', () => {
    for (const step of pinned) {
      const scene = sceneOf(step);
      const eye = scene?.view.towardsEye ?? STANDARD_VIEW.towardsEye;
      const ways = (scene?.marks ?? []).flatMap((mark) => (mark.mark === 'arrow' ? [mark.path] : [])).map((path): Vec3 => {
        const [from, to] = [path[0] ?? [0, 0, 0], path.at(-1) ?? [0, 0, 0]];
        return [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
      });
      expect(ways.length).toBeGreaterThan(0);
      // A nut comes to a pin from its far side.
      expect([step.key, ways.some((way) => dot(way, eye) / (lengthOf(way) * lengthOf(eye)) < 0.6)]).toEqual([step.key, true]);
    }
  });
});

describe('the sign of the marked face in scenes', () => {
  const signs = (scene: Scene | null): number => scene?.bodies.filter(({ look }) => look === 'drawn').length ?? 0;

  it('is on the box as long as one of its flaps lies flat', () => {
    const turned = plan.steps.filter(({ action }) => action === 'turn-up');
    expect(turned.length).toBeGreaterThan(0);
    // The last ones turn up what was flat.
    for (const step of turned.slice(0, -1)) expect([step.key, signs(sceneOf(step))]).toEqual([step.key, 2]);
  });

  it('is dashed on the lid as it is laid: its marked face is the lower one', () => {
    const lid = plan.steps.find(({ newParts }) => newParts.some(({ kind }) => kind === 'flat-panel'));
    expect(lid && signs(sceneOf(lid))).toBeGreaterThan(5);
  });
});
