import { describe, expect, it } from 'vitest';
import { buildModel, chained, dot, lengthOf, placed, turned, type Vec3 } from '../../src/model/index.ts';
import { planItem } from '../../src/plan/index.ts';
import { standOf, stepScene, STANDARD_VIEW, type Scene, type SceneBody } from '../../src/scene/index.ts';
import { stageHand } from '../../src/scene/kit/index.ts';
import { itemNamed } from '../support/items.ts';
import { planOf } from '../support/plans.ts';
import { solids } from '../support/rack.ts';
import { structureItem } from '../support/structures.ts';

const model = buildModel(structureItem('chest'), 'standard');
const plan = planItem(model, structureItem('chest').order, solids);
const sceneOf = (step: (typeof plan.steps)[number]): Scene | null => stepScene(model, step, solids);

describe('from where a step is seen', () => {
  const pinned = plan.steps.filter(({ action }) => action === 'drill' || action === 'pin-posts');

  it('is before the work where what it pins is not turned away from there, else behind it', () => {
    const bed = buildModel(itemNamed('bed'), 'toddler');
    const step = planOf(itemNamed('bed'), 'toddler').steps.find((each) => each.action === 'pin-panel' && each.standing.name === 'upright');
    if (step === undefined) throw new Error('nothing is pinned upright');
    const stands = [0, 1, 2, 3].map((quarters) => {
      const round = { ...step, standing: { ...step.standing, pose: chained(turned([0, 0, 1], (quarters * Math.PI) / 2), step.standing.pose) } };
      const stand = standOf(bed, round);
      const scene = stepScene(bed, round, solids);
      expect([stand, dot(scene?.view.towardsEye ?? [0, 0, 0], [0, -1, 0]) > 0]).toEqual([stand, stand !== 'behind']);
      return stand;
    });
    expect(stands.toSorted()).toEqual(['behind', 'front', 'front', 'front']);
  });

  it('is before the work for all that a chest needs', () => {
    for (const step of plan.steps) {
      const scene = sceneOf(step);
      if (scene !== null) expect([step.key, dot(scene.view.towardsEye, [0, -1, 0]) > 0]).toEqual([step.key, standOf(model, step) !== 'behind']);
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

  it('is on the box while its walls are turned up', () => {
    const turned = plan.steps.filter(({ action }) => action === 'turn-up');
    expect(turned.length).toBeGreaterThan(0);
    for (const step of turned) expect([step.key, signs(sceneOf(step))]).toEqual([step.key, 2]);
  });

  it('is dashed on the lid as it is laid: its marked face is the lower one', () => {
    const lid = plan.steps.find(({ newParts }) => newParts.some(({ kind }) => kind === 'flat-panel'));
    expect(lid && signs(sceneOf(lid))).toBeGreaterThan(5);
  });
});

describe('the corners of a box that are worked on from within', () => {
  const corners = plan.steps.filter(({ action, detail }) => action === 'pin-corners' || (action === 'punch-tab' && detail.on !== 'side'));
  const points = (bodies: readonly SceneBody[]): readonly Vec3[] => bodies.flatMap(({ mesh: { positions }, pose }) =>
    Array.from({ length: positions.length / 3 }, (_, index) => placed(pose, [positions[3 * index] ?? 0, positions[3 * index + 1] ?? 0, positions[3 * index + 2] ?? 0])));
  const reach = (all: readonly Vec3[], axis: 0 | 1 | 2): readonly [number, number] => [Math.min(...all.map((point) => point[axis])), Math.max(...all.map((point) => point[axis]))];

  it('are seen over the walls towards the eye, of which only the outlines are left, as wide and high as the walls', () => {
    expect(corners.map(({ action }) => action)).toEqual(['punch-tab', 'pin-corners']);
    for (const step of corners) {
      const bodies = sceneOf(step)?.bodies ?? [];
      const box = model.parts.find(({ id, shape }) => step.present.includes(id) && shape.form === 'folded')?.id ?? '';
      const whole = points([stageHand(model, step, solids).body(box, 'present')]);
      const left = points(bodies.filter(({ id }) => id === box));
      const outlines = points(bodies.filter(({ partId, look }) => partId === box && look === 'pale'));
      const [front] = reach(whole, 1);
      const inFront = (all: readonly Vec3[]): readonly Vec3[] => all.filter(([x, y]) => y < front + 25 && Math.abs(x) < 235);
      const thickness = model.kit.panel.thickness;
      expect(reach(inFront(left), 2)[1] - reach(left, 2)[0]).toBeLessThan(thickness + 1);
      expect(reach(inFront(whole), 2)[1] - reach(whole, 2)[0]).toBeGreaterThan(200);
      expect(Math.abs(reach(inFront(outlines), 2)[1] - reach(inFront(whole), 2)[1])).toBeLessThan(1.5);
      for (const axis of [0, 1] as const) expect(Math.abs(axis === 0 ? reach(outlines, 0)[1] - reach(whole, 0)[1] : reach(outlines, 1)[0] - front)).toBeLessThan(1.5);
      const tabs = bodies.filter(({ partId, look }) => partId === box && look === 'new');
      expect(tabs).toHaveLength(1);
      // Each tab beside a corner: all four of them.
      const quarters = new Set(points(tabs).map(([x, y]) => `${Math.sign(x)} ${Math.sign(y)}`));
      expect(quarters.size).toBe(4);
    }
  });
});

describe('work on the sides of a panel that stands', () => {
  it.each([['left', 'left'], ['right', 'front']] as const)('is seen, on its %s, from where one stands: %s', (side, stand) => {
    const steps = plan.steps.filter((step) => step.detail.on === 'side' && step.detail.side === side && ['wrap-side', 'punch-tab', 'pin-side'].includes(step.action));
    expect(steps.map(({ action }) => action)).toEqual(['wrap-side', 'punch-tab', 'pin-side']);
    expect(steps.map((step) => standOf(model, step))).toEqual([stand, stand, stand]);
  });
});
