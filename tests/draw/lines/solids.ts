import { Matrix4, Vector3 } from 'three';
import ManifoldModule from 'manifold-3d';
import type { Manifold } from 'manifold-3d';
import type { Mesh, Pose, Vec3 } from '../../../src/model/index.ts';
import type { Body } from '../../../src/draw/types.ts';

const kernel = await ManifoldModule();
kernel.setup();
export const Solid = kernel.Manifold;
export type Solid = Manifold;

/** A solid of the kernel as a mesh of the model: float32 positions, as the kernel rounds them. */
export function meshOf(solid: Solid): Mesh {
  const { vertProperties, numProp, triVerts } = solid.getMesh();
  const positions = new Float64Array((vertProperties.length / numProp) * 3);
  for (let p = 0; p < positions.length / 3; p++) {
    for (let k = 0; k < 3; k++) positions[3 * p + k] = vertProperties[p * numProp + k] ?? 0;
  }
  return { positions, triangles: Uint32Array.from(triVerts) };
}

export const cube = (x: number, y: number, z: number): Mesh => meshOf(Solid.cube([x, y, z], true));

/** A tube along x, its middle at the origin. */
export function tube(length: number, outside: number, inside: number, sides = 24): Mesh {
  return meshOf(tubeSolid(length, outside, inside, sides));
}

export function tubeSolid(length: number, outside: number, inside: number, sides: number): Solid {
  const outer = Solid.cylinder(length, outside / 2, outside / 2, sides, true);
  const solid = inside > 0 ? outer.subtract(Solid.cylinder(length * 2, inside / 2, inside / 2, sides, true)) : outer;
  return solid.rotate([0, 90, 0]);
}

export function at(x: number, y: number, z: number, axis: Vec3 = [0, 0, 1], angle = 0): Pose {
  return new Matrix4().makeRotationAxis(new Vector3(...axis).normalize(), angle).setPosition(x, y, z).toArray();
}

export const body = (id: string, mesh: Mesh, pose: Pose = at(0, 0, 0)): Body => ({ id, mesh, pose });

/** A body turned and moved as a whole. */
export function moved(one: Body, matrix: Matrix4): Body {
  return { ...one, pose: matrix.clone().multiply(new Matrix4().fromArray(one.pose)).toArray() };
}

/** A body grown about the scene's origin. */
export function grown(one: Body, factor: number): Body {
  const mesh = { positions: one.mesh.positions.map((value) => value * factor), triangles: one.mesh.triangles };
  const pose = one.pose.map((value, k) => (k >= 12 && k < 15 ? value * factor : value));
  return { ...one, mesh, pose };
}
