import { Mesh, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { placed, type PartKind, type Vec3 } from '../../src/model/index.ts';
import { planItem } from '../../src/plan/index.ts';
import { finishedScene, letteredScene, partBody, runScene, stepScene, STANDARD_VIEW, toThree, type Scene } from '../../src/scene/index.ts';
import { partOf, rackModel, sizes, solids } from '../support/rack.ts';
import { farthest, vector } from './poses.ts';

const kinds: readonly PartKind[] = ['long-tube', 'short-tube', 'post', 'joint', 'panel', 'panel-pin', 'joint-pin', 'wing-nut', 'cable'];

describe.each(sizes)('the finished rack, size %s', (size) => {
  const model = rackModel(size);

  it('shows every part where it stands, once', () => {
    const { bodies, marks } = finishedScene(model, solids);
    expect(bodies.map(({ id, pose }) => ({ id, pose }))).toEqual(model.parts.map(({ id, pose }) => ({ id, pose })));
    for (const body of bodies) expect(body.mesh).toBe(solids.mesh(partOf(model, body.id).shape));
    expect(marks).toEqual([]);
  });

  it('has its lettered lengths between two places as far apart as the model says', () => {
    const { marks } = letteredScene(model, solids);
    expect(marks).toHaveLength(model.dimensions.length);
    for (const mark of marks) {
      if (mark.mark !== 'length') throw new Error(`a mark that is no length: ${mark.mark}`);
      const told = model.dimensions.find((each) => each.letter === mark.text);
      const away = vector(mark.away);
      const line = vector(mark.to).sub(vector(mark.from));
      expect(line.length()).toBeCloseTo(told?.value ?? Number.NaN, 6);
      expect(away.length()).toBeGreaterThan(10);
      expect(Math.abs(away.normalize().dot(line.normalize()))).toBeLessThan(1e-9);
    }
    expect(new Set(marks.map((mark) => ('text' in mark ? mark.text : ''))).size).toBe(marks.length);
  });

  it('shows one deck of a run, all its parts and no other', () => {
    expect(runScene(model, 'deck', solids).bodies.map((body) => body.id)).toEqual(model.groups[0]?.partIds);
    expect(runScene(model, 'no such run', solids).bodies).toEqual([]);
  });

  it('has a picture of each kind of part by itself', () => {
    for (const kind of kinds) {
      const body = partBody(model, kind, solids);
      expect([kind, body?.kind]).toEqual([kind, kind]);
      expect(body?.pose.every(Number.isFinite)).toBe(true);
    }
  });
});

it('the standard view looks from the front, a little from the right, from above, with up on paper up', () => {
  const [x, y, z] = STANDARD_VIEW.towardsEye;
  expect([x > 0, y < 0, z > 0, Math.abs(x) < Math.abs(y)]).toEqual([true, true, true, true]);
  expect(STANDARD_VIEW.up).toEqual([0, 0, 1]);
});

describe('a scene as three.js objects', () => {
  const model = rackModel('low');
  const { steps } = planItem(model, [], solids);
  const scenes = [finishedScene(model, solids), ...steps.map((step) => stepScene(model, step, solids))]
    .filter((scene): scene is Scene => scene !== null);

  it('has one mesh for each body, by its name and in its place', () => {
    expect(scenes.length).toBeGreaterThan(20);
    for (const scene of scenes) {
      const group = toThree(scene);
      expect(group.name).toBe(scene.id);
      expect(group.children.map((child) => child.name)).toEqual(scene.bodies.map((body) => body.id));
      group.updateMatrixWorld(true);
      group.children.forEach((child, index) => {
        expect(child).toBeInstanceOf(Mesh);
        expect(farthest(child.matrixWorld.toArray(), scene.bodies[index]?.pose ?? [])).toBeLessThan(1e-12);
      });
    }
  });

  it('puts every corner where the body has it', () => {
    const scene = finishedScene(model, solids);
    const group = toThree(scene);
    group.updateMatrixWorld(true);
    scene.bodies.forEach((body, index) => {
      const mesh = group.children[index];
      if (!(mesh instanceof Mesh)) throw new Error('no mesh');
      const position = mesh.geometry.getAttribute('position');
      expect(position.count).toBe(body.mesh.positions.length / 3);
      expect(mesh.geometry.getIndex()?.count).toBe(body.mesh.triangles.length);
      for (const corner of [0, Math.floor(position.count / 2), position.count - 1]) {
        const own = [0, 1, 2].map((axis) => body.mesh.positions[3 * corner + axis] ?? Number.NaN) as unknown as Vec3;
        const there = new Vector3().fromBufferAttribute(position, corner).applyMatrix4(mesh.matrixWorld);
        expect(there.distanceTo(vector(placed(body.pose, own)))).toBeLessThan(1e-3);
      }
    });
  });

  it('tells new parts from old ones by their shade', () => {
    const step = steps.find((each) => each.action === 'pin-ends');
    const scene = step === undefined ? null : stepScene(model, step, solids);
    if (scene === null) throw new Error('no scene');
    const shades = new Map<string, Set<unknown>>();
    toThree(scene).children.forEach((child, index) => {
      const look = scene.bodies[index]?.look ?? '';
      const shade = child instanceof Mesh && 'color' in child.material ? JSON.stringify(child.material.color) : '';
      shades.set(look, (shades.get(look) ?? new Set()).add(shade));
    });
    const all = [...shades.values()].flatMap((set) => [...set]);
    expect([...shades.keys()].sort()).toEqual(['new', 'pale', 'present']);
    expect(new Set(all).size).toBe(3);
  });
});
