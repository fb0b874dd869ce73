// Where the middle of a part's mass is, against composite bodies of statics (a handbook's open box, C) and the divergence theorem on each part's mesh (C).
import { describe, expect, it } from 'vitest';
import { heapOf, middleOf } from '../../src/check/middle-of.ts';
import { buildModel, type Mesh, type Pattern, type PatternFlap, type Side, type Vec2, type Vec3 } from '../../src/model/index.ts';
import { sharedSolids } from '../support/kernel.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { structureItem, structureNames } from '../support/structures.ts';

const solids = await sharedSolids();

/** A box without a lid of thin sheet: floor 400 by 300, four walls 200 high turned up in one crease each. */
function openBox(): Pattern {
  const [wide, deep, high] = [400, 300, 200];
  const wall = (side: Side, root: number, length: number): PatternFlap => ({
    name: side, side, root, line: 0, wall: 1, bends: [{ at: 0, turn: Math.PI / 2, is: 'crease' }], order: [0], edge: high, corner: 0, pins: [], pinLine: 0, lugs: [], widestGap: 0,
    strips: [{ from: 0, to: high, start: -length / 2, end: length / 2 }],
  });
  const ring: readonly Vec2[] = [[-wide / 2, -deep / 2], [wide / 2, -deep / 2], [wide / 2, deep / 2], [-wide / 2, deep / 2]];
  return {
    form: 'tray', panel: 'sheet', thickness: 0.001, skin: 0.0001, neutralLayer: 1, min: [-400, -350], max: [400, 350], outline: ring, base: ring, holes: [],
    flaps: [wall('left', 200, deep), wall('right', 200, deep), wall('front', 150, wide), wall('back', 150, wide)],
  };
}

/** Centroid of a closed mesh: the sum over its triangles' tetrahedra to the origin. */
function centroid({ positions, triangles }: Mesh): Vec3 {
  const at = (corner: number): Vec3 => [0, 1, 2].map((axis) => positions[3 * corner + axis] ?? NaN) as unknown as Vec3;
  const sums = [0, 0, 0, 0];
  for (let index = 0; index < triangles.length; index += 3) {
    const [a, b, c] = [0, 1, 2].map((place) => at(triangles[index + place] ?? 0)) as [Vec3, Vec3, Vec3];
    const volume = (a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])) / 6;
    sums[3] = (sums[3] ?? 0) + volume;
    for (const axis of [0, 1, 2] as const) sums[axis] = (sums[axis] ?? 0) + (volume * (a[axis] + b[axis] + c[axis])) / 4;
  }
  return [0, 1, 2].map((axis) => (sums[axis] ?? 0) / (sums[3] ?? 1)) as unknown as Vec3;
}

describe('the middle of a composite body', () => {
  it('of an open box is at its walls’ share of half their height: A_w (h / 2) / (A_f + A_w) = 280 000 · 100 / 400 000 = 70 mm', () => {
    const [x, y, z] = middleOf({ form: 'folded', pattern: openBox(), folding: {} });
    expect(x).toBeCloseTo(0, 6);
    expect(y).toBeCloseTo(0, 6);
    expect(z).toBeCloseTo(70, 2);
  });

  it('of two bodies lies between them as their masses have it: 3 kg at 0 and 1 kg at 400 mm give 100 mm', () => {
    expect(heapOf([{ mass: 3, at: [0, 0, 0] }, { mass: 1, at: [400, 0, 80] }])).toEqual({ mass: 4, at: [100, 0, 20] });
  });
});

const panels = [
  ...structureNames.flatMap((name) => buildModel(structureItem(name), 'standard').parts.map((part) => ({ name, part }))),
  ...['rack', 'stool'].flatMap((name) => modelOf(itemNamed(name), 'standard').parts.map((part) => ({ name, part }))),
].filter(({ part: { shape: { form } } }) => form === 'folded' || form === 'panel' || form === 'plate' || form === 'pin' || form === 'cable');
const different = panels.filter(({ name, part }, index) => panels.findIndex((other) => other.name === name && JSON.stringify(other.part.shape) === JSON.stringify(part.shape)) === index);

describe('the middle of each part that is not even about its origin', () => {
  it.each(different.map(({ name, part }) => ({ name, id: part.id, part })))('$name $id: within 4 mm of its solid’s', ({ part }) => {
    const [found, solid] = [middleOf(part.shape), centroid(solids.mesh(part.shape))];
    for (const axis of [0, 1, 2] as const) expect(Math.abs(found[axis] - solid[axis]), `${found.join(' ')} against ${solid.join(' ')}`).toBeLessThan(4);
  });
});
