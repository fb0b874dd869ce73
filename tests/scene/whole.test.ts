import { describe, expect, it } from 'vitest';
import type { PartKind } from '../../src/model/index.ts';
import { finishedScene, letteredScene, partBody, runScene, STANDARD_VIEW } from '../../src/scene/index.ts';
import { partOf, rackModel, sizes, solids } from '../support/rack.ts';
import { vector } from './poses.ts';

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
      const told = model.dimensions.find(({ letter }) => mark.told.as === 'letters' && letter === mark.told.text);
      const away = vector(mark.away);
      const line = vector(mark.to).sub(vector(mark.from));
      expect(line.length()).toBeCloseTo(told?.value ?? Number.NaN, 6);
      expect(away.length()).toBeGreaterThan(10);
      expect(Math.abs(away.normalize().dot(line.normalize()))).toBeLessThan(1e-9);
    }
    expect(new Set(marks.map((mark) => ('told' in mark ? JSON.stringify(mark.told) : ''))).size).toBe(marks.length);
  });

  it('shows one deck of a run, all its parts and no other', () => {
    const parts = model.groups[0]?.partIds ?? [];
    expect(runScene(model, { name: 'deck', times: 4, parts, copies: [parts] }, solids).bodies.map((body) => body.id)).toEqual(parts);
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
