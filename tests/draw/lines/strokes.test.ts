import { describe, expect, it } from 'vitest';
import { dropStraight } from '../../../src/draw/lines/polyline.ts';
import { topologyOf } from '../../../src/draw/lines/topology.ts';
import { Solid, cube, meshOf, tube } from './solids.ts';

describe('straight points', () => {
  it('are dropped along a line and across the start of a ring', () => {
    expect(dropStraight([[0, 0], [1, 0.001], [2, 0], [2, 2]], false, 0.01)).toEqual([[0, 0], [2, 0], [2, 2]]);
    expect(dropStraight([[1, 0], [2, 0], [2, 2], [0, 2], [0, 0]], true, 0.01)).toHaveLength(4);
  });
});

describe('what is read from a mesh', () => {
  it('a cube has 6 faces and 12 corners that turn outwards', () => {
    const { edges, planes, smooth, concave } = topologyOf(cube(10, 20, 30));
    expect([planes.length / 4, edges.length / 4]).toEqual([6, 12]);
    expect([...smooth, ...concave]).toEqual(new Array(24).fill(0));
  });

  it('a mesh with every corner of every triangle on its own reads the same', () => {
    const { positions, triangles } = cube(10, 20, 30);
    const loose = Float64Array.from([...triangles].flatMap((p) => [...positions.slice(3 * p, 3 * p + 3)]));
    const { edges, points } = topologyOf({ positions: loose, triangles: Uint32Array.from(triangles.keys()) });
    expect([points.length / 3, edges.length / 4]).toEqual([8, 12]);
  });

  it('a tube of 24 sides has four sharp rims of 24 and 48 smooth edges', () => {
    const { smooth } = topologyOf(tube(100, 28, 24, 24));
    expect([smooth.filter((s) => s === 0).length, smooth.filter((s) => s === 1).length]).toEqual([96, 48]);
  });

  it('an inside corner is told from an outside one', () => {
    const step = meshOf(Solid.cube([20, 10, 10]).add(Solid.cube([10, 10, 20])));
    const { concave } = topologyOf(step);
    expect(concave.filter((c) => c === 1)).toHaveLength(1);
  });

  it('a sliver on a corner belongs to one of its faces: the corner in two pieces, no soft edge', () => {
    const { smooth } = topologyOf(slivered());
    expect([...smooth]).toEqual(new Array(13).fill(0));
  });
});

/** A box whose upper edge carries a triangle 2 µm high, bent out of both faces as rounding may leave it. */
function slivered() {
  const { positions, triangles } = cube(100, 100, 100);
  const bend = 0.002;
  const points = [...positions, 0, 50 - bend, 50];
  const middle = positions.length / 3;
  const isOn = (p: number): boolean => positions[3 * p + 1] === 50 && positions[3 * p + 2] === 50;
  const split = Array.from({ length: triangles.length / 3 }, (_, t) => [...triangles.slice(3 * t, 3 * t + 3)] as [number, number, number]).flatMap((corners) => {
    const side = [0, 1, 2].find((k) => isOn(corners[k] ?? 0) && isOn(corners[(k + 1) % 3] ?? 0));
    if (side === undefined) return [corners];
    const [a, b, c] = [corners[side] ?? 0, corners[(side + 1) % 3] ?? 0, corners[(side + 2) % 3] ?? 0];
    return positions[3 * c + 2] === 50 ? [[a, middle, c], [middle, b, c], [a, b, middle]] : [corners];
  });
  return { positions: Float64Array.from(points), triangles: Uint32Array.from(split.flat()) };
}
