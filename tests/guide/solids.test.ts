import { describe, expect, it } from 'vitest';
import { packMesh } from '../../src/guide/solids/pack-mesh.ts';
import { packSolids } from '../../src/guide/solids/pack-solids.ts';
import { stepPageId } from '../../src/guide/pages/steps.tsx';
import { axesOf, enlarged, eyeAt, turned } from '../../src/guide/browser/model/eye.ts';
import { facesAndLines } from '../../src/guide/browser/model/lines.ts';
import { playedAt, standingAt } from '../../src/guide/browser/model/moments.ts';
import { chained as chainedInPhone, placed as placedInPhone, turnedBack } from '../../src/guide/browser/model/pose.ts';
import { unpackMesh } from '../../src/guide/browser/model/unpack.ts';
import { zoomed, WHOLE } from '../../src/guide/browser/zoom.ts';
import { chained, moved, placed, turned as poseTurned, type Pose, type Shape, type Vec3 } from '../../src/model/index.ts';
import type { Step } from '../../src/plan/index.ts';
import { momentScene } from '../../src/scene/index.ts';
import { planOnce } from '../support/plans.ts';
import { rack, rackModel, solids } from '../support/rack.ts';

const TUBE: Shape = { form: 'tube', length: 1000, outside: 28, inside: 24, holes: [] };
const distance = (a: readonly number[], b: readonly number[]): number => Math.hypot(...a.map((value, axis) => value - (b[axis] ?? 0)));
const asRows = (pose: Pose): readonly number[] => [0, 1, 2].flatMap((row) => [0, 1, 2, 3].map((column) => pose[column * 4 + row] ?? 0));

describe('a packed mesh', () => {
  it('comes out of the page as it went in, to half a step', () => {
    const mesh = solids.mesh(TUBE);
    const packed = packMesh(mesh);
    const { corners, triangles } = unpackMesh(packed);
    expect([...triangles]).toEqual([...mesh.triangles]);
    expect(packed.step).toBeLessThan(0.016); // 1000 mm over 65535
    mesh.positions.forEach((value, index) => { expect(Math.abs(value - (corners[index] ?? NaN))).toBeLessThan(packed.step * 0.51 + 1e-4); });
  });

  // By hand: a tube of 24 sides has 4 rims of 24 creases, and 24 lines along each of its two round walls.
  it('has the lines of its shape and none inside its flat faces', () => {
    const { lines, faces } = facesAndLines(unpackMesh(packMesh(solids.mesh(TUBE))));
    const ends = Array.from({ length: lines.length / 10 }, (_, index) => lines.subarray(10 * index, 10 * index + 10));
    expect(faces.length / 6).toBe(solids.mesh(TUBE).triangles.length);
    expect(ends.filter((end) => end[9] === 1)).toHaveLength(2 * 4 * 24);
    expect(ends.filter((end) => end[9] === 0)).toHaveLength(2 * 2 * 24);
  });

  // The tabs of a wrapped panel lie on its inner face, 9 mm over it with their outer face: cut by holes and snips into slivers, yet flat.
  it('has no outline across a flat tab, however thin the slivers between its holes are', () => {
    const panel = rackModel('standard').parts.find(({ kind }) => kind === 'panel');
    const { lines } = facesAndLines(unpackMesh(packMesh(solids.mesh(panel?.shape ?? TUBE))));
    const across: number[][] = [];
    for (let at = 0; at < lines.length; at += 20) {
      const [from, to] = [lines.slice(at, at + 3), lines.slice(at + 10, at + 13)];
      const onTab = [from, to].every((end) => Math.abs((end[2] ?? 0) - 9) < 0.1);
      if (onTab && lines[at + 9] === 0 && distance([...from], [...to]) > 20) across.push([...from, ...to]);
    }
    expect(lines.length).toBeGreaterThan(2000);
    expect(across).toEqual([]);
  });
});

describe('the models of the steps', () => {
  const model = rackModel('low');
  const plan = planOnce(model, rack.order);
  const packed = packSolids({ model, plan }, solids, stepPageId);
  const stepOf = (key: string): Step => plan.steps.find((step) => step.key === key) ?? plan.steps[0] as Step;

  it('are there for every step that has a scene, and for no work on the bench', () => {
    expect(Object.keys(packed.stands)).toEqual(plan.steps.filter(({ standing }) => standing.name !== 'bench').map(stepPageId));
  });

  // The scene room says where every body stands at a moment; the phone must show it there, to 0.3 mm at a corner 1.5 m away.
  it.each(['push-tubes:long', 'wrap-side:front', 'push-posts:front', 'brace:back'])('stand at the end and at the beginning of %s where the scene has them', (key) => {
    const step = stepOf(key);
    const stand = packed.stands[stepPageId(step)];
    if (stand === undefined) throw new Error(`no model of ${key}`);
    for (const share of [0, 1]) {
      const scene = momentScene(model, step, solids, share);
      const shown = standingAt(packed, stand, share);
      expect(shown).toHaveLength(scene?.bodies.length ?? NaN);
      scene?.bodies.forEach(({ mesh, pose }, index) => {
        const body = shown[index];
        const unpacked = unpackMesh(packed.meshes[body?.mesh ?? -1] ?? packMesh(mesh));
        for (const corner of [0, Math.floor(mesh.positions.length / 6)]) {
          const own = [0, 1, 2].map((axis) => mesh.positions[3 * corner + axis] ?? 0) as unknown as Vec3;
          const inPhone = [0, 1, 2].map((axis) => unpacked.corners[3 * corner + axis] ?? 0) as unknown as Vec3;
          expect(distance(placed(pose, own), placedInPhone(body?.pose ?? [], inPhone))).toBeLessThan(0.3);
        }
      });
    }
  });

  it('move between beginning and end', () => {
    const stand = packed.stands['step-push-posts-front'];
    if (stand === undefined) throw new Error('no model');
    const places = [0, 0.5, 1].map((share) => standingAt(packed, stand, share).find(({ fresh }) => fresh)?.pose ?? []);
    const [begin = [], half = [], end = []] = places.map((pose) => [pose[3] ?? 0, pose[7] ?? 0, pose[11] ?? 0]);
    expect(distance(begin, end)).toBeGreaterThan(300);
    expect(distance(begin, half)).toBeCloseTo(distance(half, end), 1);
  });
});

describe('a motion on the phone', () => {
  const before = Array.from({ length: 10 }, () => ({}));
  const shares = Array.from({ length: 4000 }, (_, index) => playedAt({ before }, 5 * index));

  it('is shown three times, then slower, each time from beginning to end, and rests', () => {
    const begins = shares.flatMap(({ share }, index) => (index === 0 || (share < 0.5 && (shares[index - 1]?.share ?? 0) === 1) ? [index] : []));
    expect(begins).toHaveLength(3);
    const runs = begins.map((begin) => shares.slice(begin).findIndex(({ share }) => share === 1));
    expect(runs[1]).toBeGreaterThan(1.5 * (runs[0] ?? Infinity));
    expect(runs[2]).toBe(runs[1]);
    begins.forEach((begin, time) => {
      const run = shares.slice(begin, begin + (runs[time] ?? 0)).map(({ share }) => share);
      expect(run[0]).toBeLessThan(0.01);
      expect(run).toEqual([...run].sort((one, other) => one - other));
    });
    const over = shares.findIndex(({ isOver }) => isOver);
    expect(over).toBe((begins[2] ?? 0) + (runs[2] ?? 0));
    expect(shares.slice(over).every(({ share, isOver }) => share === 1 && isOver)).toBe(true);
  });
});

describe('the sums of the phone', () => {
  it('chain and place poses as the model room does', () => {
    const [one, other] = [chained(moved([10, -20, 30]), poseTurned([1, 2, 3], 0.7)), chained(poseTurned([0, 0, 1], -1.1), moved([5, 6, 7]))];
    const point: Vec3 = [100, 200, -300];
    expect(distance(placedInPhone(chainedInPhone(asRows(one), asRows(other)), point), placed(chained(one, other), point))).toBeLessThan(1e-9);
    const direction: Vec3 = [0.36, 0.48, 0.8];
    const there = placed(poseTurned([1, 2, 3], 0.7), direction);
    expect(distance(turnedBack(asRows(poseTurned([1, 2, 3], 0.7)), there), direction)).toBeLessThan(1e-12);
  });

  it('look from where the drawings look, upright and right-handed, however the work is turned', () => {
    const eye = eyeAt([0.5, -0.86, 0.62]);
    expect(distance(axesOf(eye).towards, [0.5, -0.86, 0.62].map((value) => value / Math.hypot(0.5, 0.86, 0.62)))).toBeLessThan(1e-12);
    for (const [across, down] of [[0, 0], [2, 0.3], [-40, 9], [1, -9]] as const) {
      const { right, up, towards } = axesOf(turned(eye, across, down));
      const cross = [up[1] * towards[2] - up[2] * towards[1], up[2] * towards[0] - up[0] * towards[2], up[0] * towards[1] - up[1] * towards[0]];
      expect(distance(cross, right)).toBeLessThan(1e-12);
      expect(right[2]).toBe(0);
      expect(up[2]).toBeGreaterThan(0);
    }
  });

  it('keep what two fingers hold under them, in the model and in a drawing', () => {
    const eye = enlarged(eyeAt([1, 0, 0]), 2, [0.3, -0.2], [0, 0]);
    // A place shown at (0.3, −0.2) before lies at twice that from the middle, which has moved the other way.
    expect([0.3 * 2 + eye.aside, -0.2 * 2 + eye.upward]).toEqual([expect.closeTo(0.3, 12), expect.closeTo(-0.2, 12)]);
    const frame = { width: 360, height: 500 };
    const zoom = zoomed(WHOLE, { x: 100, y: 200 }, 3, { x: 0, y: 0 }, frame);
    expect([zoom.scale * 100 + zoom.x, zoom.scale * 200 + zoom.y]).toEqual([100, 200]);
  });

  it('never leave a part of the frame empty beside an enlarged drawing', () => {
    const frame = { width: 360, height: 500 };
    const far = zoomed(zoomed(WHOLE, { x: 0, y: 0 }, 2, { x: 0, y: 0 }, frame), { x: 0, y: 0 }, 1, { x: 9999, y: -9999 }, frame);
    expect(far).toEqual({ scale: 2, x: 0, y: -500 });
    expect(zoomed(far, { x: 10, y: 10 }, 0.01, { x: 0, y: 0 }, frame)).toEqual(WHOLE);
    expect(zoomed(WHOLE, { x: 0, y: 0 }, 1000, { x: 0, y: 0 }, frame).scale).toBe(12);
  });
});
