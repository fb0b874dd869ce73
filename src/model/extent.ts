import { jointKinds, type FittingKind, type JointKind, type Kit } from '../read/index.ts';
import { brakeReach } from './brake-reach.ts';
import { capFor, cappedTubes } from './open-ends.ts';
import { columnOf, placed } from './pose.ts';
import type { Model, Part, Pattern, Pose, Vec3 } from './types.ts';
import { times } from './vectors.ts';

/** The least and the most that something reaches along x, y and z, mm. */
export interface Extent {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** A round face of a part: where its middle is, its axis and its radius; a corner has none. */
interface Rim {
  readonly at: Vec3;
  readonly axis: Vec3;
  readonly radius: number;
}

/** How far the parts reach, and the caps on tubes that stay open; folded panels lie within their bars, cables within the joints that they hang on. */
export function extentOf(model: Pick<Model, 'parts' | 'connections' | 'kit'>): Extent {
  const rims = [...model.parts.flatMap((part) => rimsOf(part, model.kit)), ...capRims(model)];
  const reach = (axis: 0 | 1 | 2, way: 1 | -1): number =>
    Math.max(...rims.map(({ at, axis: along, radius }) => way * at[axis] + radius * Math.sqrt(Math.max(0, 1 - along[axis] ** 2))));
  return { min: [-reach(0, -1), -reach(1, -1), -reach(2, -1)], max: [reach(0, 1), reach(1, 1), reach(2, 1)] };
}

function rimsOf({ shape, pose }: Part, kit: Kit): readonly Rim[] {
  switch (shape.form) {
    case 'tube': return [-1, 1].map((end) => rim(pose, [(end * shape.length) / 2, 0, 0], [1, 0, 0], shape.outside / 2));
    case 'joint': return jointKinds(kit).slice(0, 1).flatMap((corner) => jointRims(corner, pose));
    case 'ported-joint': return jointRims(shape.joint, pose);
    case 'folded': return shape.pattern.form === 'flat' ? cornersOf(shape.pattern).map((at) => rim(pose, at, [0, 0, 1], 0)) : [];
    case 'plate': return cornersOf({ min: [-shape.width / 2, -shape.height / 2], max: [shape.width / 2, shape.height / 2], thickness: -shape.thickness }).map((at) => rim(pose, at, [0, 0, 1], 0));
    case 'pin': return [rim(pose, [0, 0, -shape.length], [0, 0, 1], shape.diameter / 2), rim(pose, [0, 0, shape.headHeight], [0, 0, 1], shape.headDiameter / 2)];
    case 'wing-nut': return [0, shape.height].map((at) => rim(pose, [0, 0, at], [0, 0, 1], shape.span / 2));
    case 'fitting': return fittingRims(shape.fitting).map(([at, axis, radius]) => rim(pose, at, axis, radius));
    default: return [];
  }
}

function rim(pose: Pose, at: Vec3, [x, y, z]: Vec3, radius: number): Rim {
  const axis = (row: 0 | 1 | 2): number => columnOf(pose, 0)[row] * x + columnOf(pose, 1)[row] * y + columnOf(pose, 2)[row] * z;
  return { at: placed(pose, at), axis: [axis(0), axis(1), axis(2)], radius };
}

/** A cap's plate lies on the end of its tube. */
function capRims(model: Pick<Model, 'parts' | 'connections' | 'kit'>): readonly Rim[] {
  const capped = cappedTubes(model);
  return model.parts.flatMap(({ id, shape, pose }) => {
    if (shape.form !== 'tube') return [];
    const { thickness, diameter } = capFor(model.kit, shape);
    return (capped.get(id) ?? []).map((end) => rim(pose, [end * (shape.length / 2 + thickness), 0, 0], [1, 0, 0], diameter / 2));
  });
}

const jointRims = (joint: JointKind, pose: Pose): readonly Rim[] => joint.ports.flatMap((port): readonly Rim[] => {
  switch (port.is) {
    case 'socket': return [rim(pose, times(port.axis, port.stop + port.depth), port.axis, joint.socketDiameter / 2)];
    case 'sleeve': return [-port.below, port.above].map((at) => rim(pose, times(port.axis, at), port.axis, joint.sleeveDiameter / 2));
    case 'stud': return [rim(pose, times(port.axis, port.reach), port.axis, port.headDiameter / 2)];
  }
});

const cornersOf = ({ min, max, thickness }: Pick<Pattern, 'min' | 'max' | 'thickness'>): readonly Vec3[] =>
  [min[0], max[0]].flatMap((x) => [min[1], max[1]].flatMap((y) => [0, -thickness].map((z): Vec3 => [x, y, z])));

/** In the coordinates of `Shape`: a plug goes up +z, a wheel trails to +x, a bracket reaches to +y. */
function fittingRims(fitting: FittingKind): readonly (readonly [Vec3, Vec3, number])[] {
  switch (fitting.is) {
    case 'foot-plate':
    case 'end-cap': return [[[0, 0, -fitting.thickness], [0, 0, 1], fitting.diameter / 2]];
    case 'castor': return [-1, 1].flatMap((side) => {
      const axle = fitting.wheel / 2 - fitting.height;
      const brake = fitting.brake ? [[[brakeReach(fitting), 0, axle], [0, 1, 0], 0] as const] : [];
      return [[[fitting.trail, (side * fitting.width) / 2, axle], [0, 1, 0], fitting.wheel / 2] as const, ...brake];
    });
    case 'wall-bracket': return [-1, 1].flatMap((x) => [-1, 1].map((z) => [[(x * fitting.plate) / 2, fitting.reach, (z * fitting.plate) / 2], [0, 0, 1], 0] as const));
    case 'hinge':
    case 'lid-stay': return [];
  }
}
