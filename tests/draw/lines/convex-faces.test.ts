import { Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { topologyOf } from '../../../src/draw/lines/topology.ts';
import type { Topology } from '../../../src/draw/lines/topology.ts';
import { Solid, cube, meshOf, tube, tubeSolid } from './solids.ts';

/** The corners of each convex face, in order. */
function corners({ faceStarts, faceSides, triangles, points }: Topology): readonly (readonly Vector3[])[] {
  return Array.from({ length: faceStarts.length - 1 }, (_, f) =>
    [...faceSides.subarray(faceStarts[f], faceStarts[f + 1])].map((side) => new Vector3().fromArray(points, 3 * (triangles[side] ?? 0))));
}

/** Normal of a face, as long as twice its area. */
function doubled(face: readonly Vector3[]): Vector3 {
  const sum = new Vector3();
  face.forEach((corner, k) => sum.add(corner.clone().cross(face[(k + 1) % face.length] ?? corner)));
  return sum;
}

const area = (topology: Topology): number => corners(topology).reduce((sum, face) => sum + doubled(face).length() / 2, 0);

/** How far a face turns to the right at its worst corner, as the sine of that turn. */
function worstTurn(face: readonly Vector3[]): number {
  const normal = doubled(face).normalize();
  return Math.min(...face.map((corner, k) => {
    const [next, after] = [face[(k + 1) % face.length] ?? corner, face[(k + 2) % face.length] ?? corner];
    return next.clone().sub(corner).normalize().cross(after.clone().sub(next).normalize()).dot(normal);
  }));
}

const bored = Solid.cube([200, 120, 10], true).subtract(Solid.cylinder(40, 12, 12, 24, true)).subtract(Solid.cylinder(40, 4, 4, 12, true).translate(60, 20, 0));

describe('flat convex faces of a mesh', () => {
  it('are six for a cube, and fourteen for a rod of twelve sides', () => {
    expect(corners(topologyOf(cube(30, 40, 50)))).toHaveLength(6);
    expect(corners(topologyOf(tube(300, 20, 0, 12)))).toHaveLength(14);
  });

  it.each([
    ['a cube', Solid.cube([30, 40, 50], true)],
    ['a tube', tubeSolid(300, 20, 16, 24)],
    ['a plate with two holes', bored],
    ['a plate turned askew', bored.rotate([17, 29, 41])],
  ])('have no inside corner and the area that the kernel tells: %s', (_, solid) => {
    const topology = topologyOf(meshOf(solid));
    for (const face of corners(topology)) expect(worstTurn(face)).toBeGreaterThan(-1e-3);
    expect(area(topology)).toBeCloseTo(solid.surfaceArea(), 1);
  });

  // Hertel and Mehlhorn (1983), from memory: with r inside corners at least ⌈r / 2⌉ + 1 faces are needed, and at most
  // 2 r + 1 are left. The plate's two faces have 36 inside corners each, and two holes add two cuts.
  it('are few where a plate has holes', () => {
    const topology = topologyOf(meshOf(bored));
    expect(corners(topology).length).toBeLessThanOrEqual(4 + 36 + 2 * (2 * 36 + 1));
    expect(corners(topology).length).toBeLessThan(topology.triangles.length / 3);
  });
});
