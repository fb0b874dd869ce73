import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { Shape } from '../types.ts';
import { alongAxis, rod } from './round.ts';

/** A moulded corner joint: sleeve for the post, two sockets for deck tubes, two studs for cable loops. */
export function buildJoint(kernel: ManifoldToplevel, shape: Extract<Shape, { form: 'joint' }>): Manifold {
  const { joint } = shape;
  const mouth = joint.stop + joint.socketDepth;
  const socket = rod(kernel, joint.socketDiameter, 0, mouth);
  const stud = rod(kernel, joint.studDiameter, 0, joint.studReach)
    .add(rod(kernel, joint.studHeadDiameter, joint.studReach - joint.studHead, joint.studReach));
  const body = kernel.Manifold.union([
    rod(kernel, joint.sleeveDiameter, -joint.sleeveBelow, joint.sleeveAbove),
    alongAxis(socket, 'x'),
    alongAxis(socket, 'y'),
    alongAxis(stud, 'x').rotate([0, 0, 180]),
    alongAxis(stud, 'y').rotate([0, 0, 180]),
  ]);
  const seat = rod(kernel, joint.bore, joint.stop, mouth + 1, 'hole');
  const openings = [
    rod(kernel, joint.bore, -joint.sleeveBelow - 1, joint.sleeveAbove + 1, 'hole'),
    alongAxis(seat, 'x'),
    alongAxis(seat, 'y'),
  ];
  if (shape.drilled !== null) {
    const across = rod(kernel, shape.pinDiameter, -joint.sleeveDiameter, joint.sleeveDiameter, 'hole');
    openings.push(alongAxis(across, shape.drilled).translate(0, 0, -joint.pinHeight));
  }
  return kernel.Manifold.difference([body, ...openings]);
}
