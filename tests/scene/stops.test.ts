import { beforeAll, describe, expect, it } from 'vitest';
import { placed, type Solids, type Vec3 } from '../../src/model/index.ts';
import { stepScene, type Mark, type SceneBody } from '../../src/scene/index.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { planOnce } from '../support/plans.ts';

let solids: Solids;
beforeAll(async () => { solids = await sharedSolids(); });

const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

/** Where a body begins along a way from a place, mm, measured on its mesh. */
function beginsAlong({ mesh, pose }: SceneBody, from: Vec3, way: Vec3): number {
  let least = Infinity;
  for (let at = 0; at < mesh.positions.length; at += 3) {
    const corner = placed(pose, [mesh.positions[at] ?? 0, mesh.positions[at + 1] ?? 0, mesh.positions[at + 2] ?? 0]);
    least = Math.min(least, dot(minus(corner, from), way));
  }
  return least;
}

// Joints are pale where they come to stand: their solids tell whether the length on the picture is theirs.
describe.each([['bed', 'toddler'], ['bed', 'nap'], ['chair', 'mark-2']] as const)('joints slid on, %s %s', (item, size) => {
  it('stand with their near edge as far from the foot as the picture says', () => {
    const model = modelOf(itemNamed(item), size);
    let compared = 0;
    for (const step of planOnce(model, itemNamed(item).order).steps.filter(({ action }) => action === 'slide-on')) {
      const scene = stepScene(model, step, solids);
      const homes = scene?.bodies.filter(({ look, kind, partId }) => look === 'pale' && kind === 'tool' && partId !== null) ?? [];
      const lengths = scene?.marks.filter((mark): mark is Extract<Mark, { mark: 'length' }> => mark.mark === 'length') ?? [];
      for (const { from, to, told } of lengths) {
        if (told.as !== 'length') throw new Error('a length that is none');
        const far = Math.hypot(...minus(to, from));
        const way = minus(to, from).map((value) => value / far) as unknown as Vec3;
        const across = (body: SceneBody): number => Math.hypot(...minus(minus(placed(body.pose, [0, 0, 0]), from), way.map((value) => value * dot(minus(placed(body.pose, [0, 0, 0]), from), way)) as unknown as Vec3));
        const onBar = homes.filter((body) => across(body) < 1).map((body) => beginsAlong(body, from, way));
        const nearest = Math.min(...onBar);
        if (onBar.length === 0 || lengths.length > 1) continue;
        expect(Math.abs(nearest - told.mm), `${step.key}: ${told.mm} mm told, ${nearest} mm by the solid`).toBeLessThan(0.6);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(0);
  });
});
