import { cross, dot, minus, plus, times, unit, type FlatPattern, type Pose, type Shape, type Solids, type Vec2, type Vec3 } from '../../model/index.ts';
import { pieceOf, type Piece } from './convex.ts';
import { boxPieces } from './box-pieces.ts';
import { prism, rectangle } from './prisms.ts';
import { axisOf, carried, turnedBy } from './vectors.ts';

/** Sides of a round body; its flats lie on the circle, so that the body holds the round one. */
const ROUND = 12;

const round = (diameter: number): readonly Vec2[] => Array.from({ length: ROUND }, (_, index): Vec2 => {
  const angle = (2 * Math.PI * (index + 0.5)) / ROUND;
  const radius = diameter / 2 / Math.cos(Math.PI / ROUND);
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
});

/** A round bar along one of a pose's own axes. */
function rod(pose: Pose, axis: 'x' | 'y' | 'z', diameter: number, from: number, to: number): Piece {
  switch (axis) {
    case 'x': return prism(round(diameter), from, to, (u, v, w) => carried(pose, w, u, v));
    case 'y': return prism(round(diameter), from, to, (u, v, w) => carried(pose, u, w, v));
    case 'z': return prism(round(diameter), from, to, (u, v, w) => carried(pose, u, v, w));
  }
}

/** Whether a shape is a panel that stays flat and is pinned to bars. */
export const isFlatPanel = (shape: Shape | undefined): boolean =>
  shape?.form === 'plate' || (shape?.form === 'folded' && shape.pattern.form === 'flat');

/** A body carried by a pose. */
export function seenFrom(pose: Pose, { points, normals }: Piece): Piece {
  const places: Vec3[] = [];
  for (let at = 0; at < points.length; at += 3) places.push(carried(pose, points[at] ?? 0, points[at + 1] ?? 0, points[at + 2] ?? 0));
  return pieceOf(places, normals.map((normal) => turnedBy(pose, normal)));
}

/** Convex bodies that together hold a part as it stands; a panel without its flaps, a box with its walls up. Hollows are filled. */
export function piecesOf(shape: Shape, pose: Pose, solids: Solids): readonly Piece[] {
  switch (shape.form) {
    case 'tube': return [tubePiece(shape, pose)];
    case 'ported-joint': return shape.joint.ports.flatMap((port) => portPieces(shape.joint, port)).map((piece) => seenFrom(pose, piece));
    case 'folded': return boxPieces(shape.pattern).map((piece) => seenFrom(pose, piece));
    case 'joint': return jointPieces(shape, pose);
    case 'panel': return basePieces(shape.pattern, pose);
    case 'pin': return [rod(pose, 'z', shape.diameter, -shape.length, 0), rod(pose, 'z', shape.headDiameter, 0, shape.headHeight)];
    case 'wing-nut': return [prism(rectangle(-shape.span / 2, shape.span / 2, -shape.bore, shape.bore), 0, shape.height, (u, v, w) => carried(pose, u, v, w))];
    case 'plate': return [prism(rectangle(-shape.width / 2, shape.width / 2, -shape.height / 2, shape.height / 2), 0, shape.thickness, (u, v, w) => carried(pose, u, v, w))];
    case 'cable': return cablePieces(shape, pose);
    case 'fitting': return [meshPiece(shape, pose, solids, 'plug' in shape.fitting ? 0 : Infinity)];
    default: return [meshPiece(shape, pose, solids)];
  }
}

function tubePiece({ length, outside, profile }: Extract<Shape, { form: 'tube' }>, pose: Pose): Piece {
  const half = outside / 2;
  return profile === 'square'
    ? prism(rectangle(-half, half, -half, half), -length / 2, length / 2, (u, v, w) => carried(pose, w, u, v))
    : rod(pose, 'x', outside, -length / 2, length / 2);
}

type PortedJoint = Extract<Shape, { form: 'ported-joint' }>['joint'];

/** The body of a joint's port, in the joint's own coordinates. */
function portPieces(joint: PortedJoint, port: PortedJoint['ports'][number]): readonly Piece[] {
  const along = (outline: readonly Vec2[], from: number, to: number): Piece => alongAxis(outline, port.axis, from, to);
  const mouth = (size: number): readonly Vec2[] => (joint.profile === 'square' ? rectangle(-size / 2, size / 2, -size / 2, size / 2) : round(size));
  switch (port.is) {
    case 'socket': return [along(mouth(joint.socketDiameter), 0, port.stop + port.depth)];
    case 'sleeve': return [along(mouth(joint.sleeveDiameter), -port.below, port.above)];
    case 'stud': return [along(round(port.diameter), 0, port.reach), along(round(port.headDiameter), port.reach - port.head, port.reach)];
  }
}

/** An outline drawn out along a direction; its first axis square to x where it can be, as the solids have it. */
function alongAxis(outline: readonly Vec2[], axis: Vec3, from: number, to: number): Piece {
  const beside: Vec3 = Math.abs(axis[0]) < 0.999999 ? [1, 0, 0] : [0, 1, 0];
  const side = unit(minus(beside, times(axis, dot(axis, beside))));
  const deep = cross(axis, side);
  return prism(outline, from, to, (u, v, w) => plus(plus(times(side, u), times(deep, v)), times(axis, w)));
}

function jointPieces({ joint }: Extract<Shape, { form: 'joint' }>, pose: Pose): readonly Piece[] {
  const mouth = joint.stop + joint.socketDepth;
  return [
    rod(pose, 'z', joint.sleeveDiameter, -joint.sleeveBelow, joint.sleeveAbove),
    rod(pose, 'x', joint.socketDiameter, 0, mouth),
    rod(pose, 'y', joint.socketDiameter, 0, mouth),
    ...(['x', 'y'] as const).flatMap((axis) => [
      rod(pose, axis, joint.studDiameter, -joint.studReach, 0),
      rod(pose, axis, joint.studHeadDiameter, -joint.studReach, joint.studHead - joint.studReach),
    ]),
  ];
}

/** The middle part of a panel up to the axes of its tubes, notched at the corners: two crossing rectangles. */
function basePieces(pattern: FlatPattern, pose: Pose): readonly Piece[] {
  const [cx, cy] = [pattern.blank[0] / 2 - pattern.notch[0], pattern.blank[1] / 2 - pattern.notch[1]];
  const [ax, ay] = pattern.axes;
  return [rectangle(-ax, ax, -cy, cy), rectangle(-cx, cx, -ay, ay)]
    .map((outline) => prism(outline, -pattern.thickness, 0, (u, v, w) => carried(pose, u, v, w)));
}

function cablePieces(shape: Extract<Shape, { form: 'cable' }>, pose: Pose): readonly Piece[] {
  const thick = shape.diameter / 2;
  const loop = shape.loopInside + shape.diameter;
  const bar = (from: number, to: number, half: number): Piece =>
    prism(rectangle(from, to, -half, half), -thick, thick, (u, v, w) => carried(pose, u, v, w));
  return [bar(0, shape.length, thick), bar(-loop, loop, loop), bar(shape.length - loop, shape.length + loop, loop)];
}

const ROUNDING = 1e-6;

/** The hull of any other shape's mesh, up to a height in its own coordinates: the plug of a fitting is inside its bar, and in nobody's way that the bar is not in. */
function meshPiece(shape: Shape, pose: Pose, solids: Solids, height = Infinity): Piece {
  const { positions } = solids.mesh(shape);
  const points: Vec3[] = [];
  for (let at = 0; at < positions.length; at += 3) {
    if ((positions[at + 2] ?? 0) <= height + ROUNDING) points.push(carried(pose, positions[at] ?? 0, positions[at + 1] ?? 0, positions[at + 2] ?? 0));
  }
  return pieceOf(points, [axisOf(pose, 0), axisOf(pose, 1), axisOf(pose, 2)]);
}
