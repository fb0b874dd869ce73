import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { JointKind, Port } from '../../read/index.ts';
import { facing } from '../pose.ts';
import { PROFILES } from '../profiles/profiles.ts';
import type { Shape, Vec3 } from '../types.ts';
import { cross, squareTo } from '../vectors.ts';
import { rod } from './round.ts';

type Transform = Parameters<Manifold['transform']>[0];

/** A moulded joint with its sockets, sleeves and studs round the middle where their axes meet. */
export function buildPortedJoint(kernel: ManifoldToplevel, { joint, pinDiameter, drilled }: Extract<Shape, { form: 'ported-joint' }>): Manifold {
  const body = kernel.Manifold.union(joint.ports.map((port) => along(portBody(kernel, joint, port), port.axis)));
  const openings = joint.ports.flatMap((port) => {
    const opening = portOpening(kernel, joint, port);
    return opening === null ? [] : [along(opening, port.axis)];
  });
  const holes = drilled.map(({ at, along: way }) =>
    along(rod(kernel, pinDiameter, -joint.sleeveDiameter, joint.sleeveDiameter, 'hole'), way).translate([...at] as [number, number, number]));
  return kernel.Manifold.difference([body, ...openings, ...holes]);
}

/** What was built along +z, along a direction. */
export function along(solid: Manifold, axis: Vec3): Manifold {
  const side = squareTo([1, 0, 0], axis) ?? squareTo([0, 1, 0], axis) ?? [1, 0, 0];
  return solid.transform([...facing([0, 0, 0], side, cross(axis, side), axis)] as Transform);
}

function portBody(kernel: ManifoldToplevel, joint: JointKind, port: Port): Manifold {
  switch (port.is) {
    case 'socket': return PROFILES[joint.profile].bar(kernel, joint.socketDiameter, 0, port.stop + port.depth);
    case 'sleeve': return PROFILES[joint.profile].bar(kernel, joint.sleeveDiameter, -port.below, port.above);
    case 'stud': return rod(kernel, port.diameter, 0, port.reach).add(rod(kernel, port.headDiameter, port.reach - port.head, port.reach));
  }
}

function portOpening(kernel: ManifoldToplevel, joint: JointKind, port: Port): Manifold | null {
  switch (port.is) {
    case 'socket': return PROFILES[joint.profile].bar(kernel, joint.bore, port.stop, port.stop + port.depth + 1, 'hole');
    case 'sleeve': return PROFILES[joint.profile].bar(kernel, joint.bore, -port.below - 1, port.above + 1, 'hole');
    case 'stud': return null;
  }
}
