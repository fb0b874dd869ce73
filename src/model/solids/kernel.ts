import Module from 'manifold-3d';
import type { Box as ThreeBox, Manifold, ManifoldToplevel } from 'manifold-3d';
import { chained, placed, standstill, undone } from '../pose.ts';
import type { FlatPattern, Mesh, Pose, Shape, Vec3 } from '../types.ts';
import { buildCable } from './cable.ts';
import { buildFitting } from './fitting.ts';
import { buildFolded } from './folded.ts';
import { buildJoint } from './joint.ts';
import { buildPanel } from './panel.ts';
import { buildPin, buildWingNut } from './pin.ts';
import { buildPlate } from './plate.ts';
import { buildPortedJoint } from './ported-joint.ts';
import { buildTube } from './tube.ts';

type Transform = Parameters<Manifold['transform']>[0];

/** A shape standing somewhere. */
export interface Placed {
  readonly shape: Shape;
  readonly pose: Pose;
}

export interface Box3 {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** Solid geometry of the parts. Holds what it built, by shape, until it is let go. */
export interface Solids {
  /** Closed mesh of a shape in its own coordinates, mm. The same object for an equal shape. */
  mesh(shape: Shape): Mesh;
  /** What of a shape lies on one side of a plane, in its own coordinates, mm: where the share along `normal` (a unit vector) is more than `from`; null where nothing does. */
  cut(shape: Shape, normal: Vec3, from: number): Mesh | null;
  /** mm³. */
  volume(shape: Shape): number;
  /** Volume that two standing shapes share, mm³. */
  overlap(one: Placed, other: Placed): number;
  /** The box round a standing shape, mm. */
  box(one: Placed): Box3;
}

/** Loads the solid kernel (manifold-3d, WebAssembly) once; the shapes are built when first asked for. */
export async function loadSolids(): Promise<Solids> {
  const kernel = await Module();
  kernel.setup();
  const built = new Map<string, Manifold>();
  const meshes = new Map<string, Mesh>();

  /** Writing a shape out is slow; the same object is written once, and a pattern once for all its folds. */
  const keys = new WeakMap<Shape | FlatPattern, string>();
  const written = <Thing extends Shape | FlatPattern>(thing: Thing, write: (thing: Thing) => string): string => {
    const key = keys.get(thing) ?? write(thing);
    keys.set(thing, key);
    return key;
  };
  const keyOf = (shape: Shape): string => written(shape, (each) => {
    if (each.form !== 'panel') return JSON.stringify(each);
    const { pattern, ...rest } = each;
    return `${JSON.stringify(rest)} ${written(pattern, JSON.stringify)}`;
  });
  const solid = (shape: Shape): Manifold => {
    const key = keyOf(shape);
    const known = built.get(key) ?? build(kernel, shape);
    built.set(key, known);
    return known;
  };
  const numbers = new Map<string, number>();
  const numberOf = (shape: Shape): number => {
    const key = keyOf(shape);
    const known = numbers.get(key) ?? numbers.size;
    numbers.set(key, known);
    return known;
  };
  const shared = new Map<string, number>();
  const ownBoxes = new Map<string, ThreeBox>();
  const ownBox = (shape: Shape): ThreeBox => {
    const key = keyOf(shape);
    const known = ownBoxes.get(key) ?? solid(shape).boundingBox();
    ownBoxes.set(key, known);
    return known;
  };

  const boxOf = ({ shape, pose }: Placed): Box3 => standingBox(ownBox(shape), pose);

  return {
    mesh: (shape) => {
      const key = keyOf(shape);
      const known = meshes.get(key) ?? meshOf(solid(shape));
      meshes.set(key, known);
      return known;
    },
    cut: (shape, normal, from) => {
      const kept = solid(shape).trimByPlane([...normal], from);
      const mesh = kept.isEmpty() ? null : meshOf(kept);
      kept.delete();
      return mesh;
    },
    volume: (shape) => solid(shape).volume(),
    overlap: (one, other) => {
      if (!meet(boxOf(one), boxOf(other))) return 0;
      const relative = chained(undone(other.pose), one.pose);
      if (!meet(standingBox(ownBox(one.shape), relative), standingBox(ownBox(other.shape), standstill))) return 0;
      // Parts alike stand to each other in the same way again and again.
      const key = `${numberOf(one.shape)} ${numberOf(other.shape)} ${relative.map((value) => value.toFixed(POSE_DIGITS)).join(' ')}`;
      const volume = shared.get(key) ?? sharedVolume(solid(one.shape), solid(other.shape), relative);
      shared.set(key, volume);
      return volume;
    },
    box: boxOf,
  };
}

/** Poses are the same when they differ by less than a millionth of a millimetre. */
const POSE_DIGITS = 6;

/** What one solid shares with another when it stands so in the other's coordinates, mm³. */
function sharedVolume(one: Manifold, other: Manifold, pose: Pose): number {
  const mover = one.transform([...pose] as Transform);
  const common = mover.intersect(other);
  const volume = common.volume();
  for (const used of [mover, common]) used.delete();
  return volume;
}

function build(kernel: ManifoldToplevel, shape: Shape): Manifold {
  switch (shape.form) {
    case 'tube': return buildTube(kernel, shape);
    case 'joint': return buildJoint(kernel, shape);
    case 'panel': return buildPanel(kernel, shape);
    case 'pin': return buildPin(kernel, shape);
    case 'wing-nut': return buildWingNut(kernel, shape);
    case 'cable': return buildCable(kernel, shape);
    case 'plate': return buildPlate(kernel, shape);
    case 'ported-joint': return buildPortedJoint(kernel, shape);
    case 'fitting': return buildFitting(kernel, shape);
    case 'folded': return buildFolded(kernel, shape);
    case 'strip': return kernel.Manifold.cube([shape.length, shape.width, shape.height], true).translate(0, 0, shape.height / 2);
    case 'patch': return kernel.Manifold.extrude([shape.outline.map(([x, y]): [number, number] => [x, y])], shape.height);
  }
}

const meet = (one: Box3, other: Box3): boolean => [0, 1, 2].every((axis) =>
  (one.min[axis] ?? 0) <= (other.max[axis] ?? 0) && (other.min[axis] ?? 0) <= (one.max[axis] ?? 0));

/** The box round a posed box: its half sides, turned, add up by their absolute values. */
function standingBox(own: Readonly<ThreeBox>, pose: Pose): Box3 {
  const middle = placed(pose, [0, 1, 2].map((axis) => ((own.min[axis] ?? 0) + (own.max[axis] ?? 0)) / 2) as unknown as Vec3);
  const half = [0, 1, 2].map((axis) => ((own.max[axis] ?? 0) - (own.min[axis] ?? 0)) / 2);
  const reach = [0, 1, 2].map((row) => half.reduce((sum, side, column) => sum + Math.abs(pose[column * 4 + row] ?? 0) * side, 0));
  const edge = (sign: number): Vec3 => [0, 1, 2].map((axis) => (middle[axis] ?? 0) + sign * (reach[axis] ?? 0)) as unknown as Vec3;
  return { min: edge(-1), max: edge(1) };
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
