import { Triangle, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { asMatrix, chained, placed, type Vec3 } from '../../src/model/index.ts';
import { momentScene, stepScene, type Mark, type SceneBody } from '../../src/scene/index.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

/** A hand's breadth and a little more, mm (common practice, no source). */
const CLEAR = 100;
const SMALL: readonly SceneBody['kind'][] = ['joint-pin', 'panel-pin', 'wing-nut', 'cable', 'fitting'];
const handsIn = (marks: readonly Mark[], person: 1 | 2 = 2): readonly Vec3[] => marks.flatMap((mark) => (mark.mark === 'hand' && mark.person === person ? [mark.at] : []));

/** How far a place is from a body, mm. */
function farFrom({ mesh: { positions, triangles }, pose }: SceneBody, at: Vec3): number {
  const [matrix, place, closest] = [asMatrix(pose), new Vector3(...at), new Vector3()];
  const corners = Array.from(triangles, (index) => new Vector3().fromArray(positions, 3 * index).applyMatrix4(matrix));
  return corners.reduce((far, a, index) => {
    const [b, c] = [corners[index + 1], corners[index + 2]];
    if (index % 3 !== 0 || b === undefined || c === undefined) return far;
    const triangle = new Triangle(a, b, c);
    return triangle.getArea() < 1e-6 ? far : Math.min(far, triangle.closestPointToPoint(place, closest).distanceTo(place));
  }, Infinity);
}

/** How far a place is from a pin with its hole, mm. */
function farFromPin(head: Vec3, tip: Vec3, at: Vec3): number {
  const [from, way, place] = [new Vector3(...head), new Vector3(...tip).sub(new Vector3(...head)), new Vector3(...at)];
  const share = Math.min(1, Math.max(0, place.clone().sub(from).dot(way) / way.lengthSq()));
  return place.distanceTo(from.addScaledVector(way, share));
}

describe.each(everySize)('hands of the second person in $name', ({ item, size }) => {
  const model = modelOf(item, size);
  const held = planOf(item, size).steps.filter((step) => step.held.length > 0);

  it('are clear of every hole that is made or filled, of every flap on its way, and of every part that comes', () => {
    for (const step of held) {
      const hands = handsIn(stepScene(model, step, solids)?.marks ?? []);
      const fresh = [...step.drillsFor, ...step.newParts.flatMap(({ ids }) => ids)];
      const pins = model.parts.flatMap(({ id, shape, pose }) => (fresh.includes(id) && shape.form === 'pin' ? [{ pose: chained(step.standing.pose, pose), long: shape.length }] : []));
      const moving = step.motions.length === 0 ? [] : [0, 0.25, 0.5, 0.75, 1].flatMap((done) =>
        momentScene(model, step, solids, done)?.bodies.filter(({ look, partId, kind }) => look === 'new' && partId !== null && !SMALL.includes(kind)) ?? []);
      for (const at of hands) {
        const far = Math.min(...pins.map(({ pose, long }) => farFromPin(placed(pose, [0, 0, 0]), placed(pose, [0, 0, -long]), at)), ...moving.map((body) => farFrom(body, at)));
        expect([step.key, far]).toEqual([step.key, expect.toSatisfy((mm: number) => mm >= CLEAR)]);
      }
    }
  });

  it('are never more than two on what is held, and there wherever work is held that is no flat panel', () => {
    for (const step of held) {
      const hands = handsIn(stepScene(model, step, solids)?.marks ?? []).length;
      const isPanel = step.held.some((ids) => ids.some((id) => model.parts.some((part) => part.id === id && part.shape.form === 'plate')) && ids.length === 1);
      expect([step.key, hands]).toEqual([step.key, expect.toSatisfy((count: number) => count >= (isPanel ? 0 : 1) && count <= 2 * step.held.length)]);
    }
  });
});

describe.each(everySize)('hands that carry in $name', ({ item, size }) => {
  const model = modelOf(item, size);
  const slid = planOf(item, size).steps.filter(({ action }) => action === 'slide-on');

  it('are on what slides onto bars, one person’s where the other holds, else one of each', () => {
    for (const step of slid) {
      const scene = stepScene(model, step, solids);
      const units = step.motions.flatMap((motion) => (motion.kind === 'slide' && motion.parts.length > 2 ? [motion.parts] : []));
      const alone = step.held.length > 0 || step.people === 1;
      const [first, second] = ([1, 2] as const).map((person) => handsIn(scene?.marks ?? [], person)) as [readonly Vec3[], readonly Vec3[]];
      expect([step.key, first.length]).toEqual([step.key, units.length === 0 ? 0 : alone ? 2 : 1]);
      if (!alone) expect([step.key, second.length]).toEqual([step.key, units.length === 0 ? 0 : 1]);
      const moving = scene?.bodies.filter(({ look, kind }) => look === 'new' && !SMALL.includes(kind)) ?? [];
      for (const at of alone ? first : [...first, ...second]) expect([step.key, Math.min(...moving.map((body) => farFrom(body, at)))]).toEqual([step.key, expect.toSatisfy((mm: number) => mm < 30)]);
    }
  });
});
