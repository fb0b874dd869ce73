import Module from 'manifold-3d';
import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { Mesh, Pose, Shape } from '../types.ts';
import { buildCable } from './cable.ts';
import { buildJoint } from './joint.ts';
import { buildPanel } from './panel.ts';
import { buildPin, buildWingNut } from './pin.ts';
import { buildTube } from './tube.ts';

/** A shape standing somewhere. */
export interface Placed {
  readonly shape: Shape;
  readonly pose: Pose;
}

/** Solid geometry of the parts. Holds what it built, by shape, until it is let go. */
export interface Solids {
  /** Closed mesh of a shape in its own coordinates, mm. The same object for an equal shape. */
  mesh(shape: Shape): Mesh;
  /** mm³. */
  volume(shape: Shape): number;
  /** Volume that two standing shapes share, mm³. */
  overlap(one: Placed, other: Placed): number;
  /** Whether the boxes round two standing shapes come nearer than `gap` mm. */
  near(one: Placed, other: Placed, gap: number): boolean;
}

/** Loads the solid kernel (manifold-3d, WebAssembly) once; the shapes are built when first asked for. */
export async function loadSolids(): Promise<Solids> {
  const kernel = await Module();
  kernel.setup();
  const built = new Map<string, Manifold>();
  const meshes = new Map<string, Mesh>();

  const solid = (shape: Shape): Manifold => {
    const key = JSON.stringify(shape);
    const known = built.get(key) ?? build(kernel, shape);
    built.set(key, known);
    return known;
  };
  const standing = ({ shape, pose }: Placed): Manifold => solid(shape).transform([...pose] as Parameters<Manifold['transform']>[0]);

  return {
    mesh: (shape) => {
      const key = JSON.stringify(shape);
      const known = meshes.get(key) ?? meshOf(solid(shape));
      meshes.set(key, known);
      return known;
    },
    volume: (shape) => solid(shape).volume(),
    overlap: (one, other) => {
      const [left, right] = [standing(one), standing(other)];
      const common = left.intersect(right);
      const volume = common.volume();
      for (const used of [left, right, common]) used.delete();
      return volume;
    },
    near: (one, other, gap) => {
      const [left, right] = [standing(one), standing(other)];
      const [a, b] = [left.boundingBox(), right.boundingBox()];
      for (const used of [left, right]) used.delete();
      return [0, 1, 2].every((axis) =>
        (a.min[axis] ?? 0) <= (b.max[axis] ?? 0) + gap && (b.min[axis] ?? 0) <= (a.max[axis] ?? 0) + gap);
    },
  };
}

function build(kernel: ManifoldToplevel, shape: Shape): Manifold {
  switch (shape.form) {
    case 'tube': return buildTube(kernel, shape);
    case 'joint': return buildJoint(kernel, shape);
    case 'panel': return buildPanel(kernel, shape);
    case 'pin': return buildPin(kernel, shape);
    case 'wing-nut': return buildWingNut(kernel, shape);
    case 'cable': return buildCable(kernel, shape);
  }
}

function meshOf(solid: Manifold): Mesh {
  const { vertProperties, triVerts, numProp } = solid.getMesh();
  const count = vertProperties.length / numProp;
  const positions = new Float64Array(count * 3);
  for (let vertex = 0; vertex < count; vertex++) {
    for (let axis = 0; axis < 3; axis++) positions[vertex * 3 + axis] = vertProperties[vertex * numProp + axis] ?? 0;
  }
  return { positions, triangles: new Uint32Array(triVerts) };
}
