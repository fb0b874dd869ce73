import type { Face, Kit } from '../read/index.ts';
import { makePart } from './make-part.ts';
import { chained, facing, moved, turned } from './pose.ts';
import { tubeShape } from './tube.ts';
import type { Connection, Joining, Part, Shape, Vec2, Vec3 } from './types.ts';

export const SIDES: readonly Face[] = ['left', 'right', 'front', 'back'];

/** The four corners, named by side along x and along y. */
export const CORNERS = [
  { name: 'left-front', x: 'left', y: 'front', sx: -1, sy: -1 },
  { name: 'right-front', x: 'right', y: 'front', sx: 1, sy: -1 },
  { name: 'left-back', x: 'left', y: 'back', sx: -1, sy: 1 },
  { name: 'right-back', x: 'right', y: 'back', sx: 1, sy: 1 },
] as const;

export type Corner = (typeof CORNERS)[number];

/** Tubes in corner joints, axes in the plane z = `height`, middle on the z axis. */
export interface Frame {
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
  readonly connections: readonly Connection[];
}

/** Corners that a frame with these sides has a joint at. */
export const cornersOf = (sides: readonly Face[]): readonly Corner[] =>
  CORNERS.filter(({ x, y }) => sides.includes(x) || sides.includes(y));

/**
 * A frame with tubes on the given sides of a rectangle whose corners are the posts' axes (half distances
 * `axes`). The joints' deck side looks up, or down on a panel that the frame lies on.
 */
export function buildFrame(kit: Kit, axes: Vec2, width: number, depth: number, sides: readonly Face[], deckSide: 'up' | 'down', height: number): Frame {
  const joints = cornersOf(sides).map((corner) => jointAt(kit, corner, axes, deckSide, height));
  const tubes = SIDES.filter((side) => sides.includes(side)).map((side) => tubeOn(kit, side, axes, width, depth, height));
  return { parts: [...joints, ...tubes], joinings: sides.flatMap(joiningsOf), connections: sides.flatMap((side) => socketsOf(kit, side)) };
}

function tubeOn(kit: Kit, side: Face, axes: Vec2, width: number, depth: number, height: number): Part {
  const sign = side === 'left' || side === 'front' ? -1 : 1;
  if (side === 'front' || side === 'back') {
    return makePart(kit, `long-tube-${side}`, 'long-tube', { at: 'side', side }, tubeShape(kit, width), moved([0, sign * axes[1], height]));
  }
  const pose = chained(moved([sign * axes[0], 0, height]), turned([0, 0, 1], Math.PI / 2));
  return makePart(kit, `short-tube-${side}`, 'short-tube', { at: 'side', side }, tubeShape(kit, depth), pose);
}

/** The sockets point to the two neighbours; which of them is the joint's own x follows from its handedness. */
function jointAt(kit: Kit, { name, x, y, sx, sy }: Corner, axes: Vec2, deckSide: 'up' | 'down', height: number): Part {
  const z = deckSide === 'up' ? 1 : -1;
  const at: Vec3 = [sx * axes[0], sy * axes[1], height];
  const straight = sx * sy === z;
  const inX: Vec3 = [-sx, 0, 0];
  const inY: Vec3 = [0, -sy, 0];
  const pose = straight ? facing(at, inX, inY, [0, 0, z]) : facing(at, inY, inX, [0, 0, z]);
  const shape: Shape = { form: 'joint', joint: kit.joint, pinDiameter: kit.jointPin.diameter, drilled: straight ? 'y' : 'x' };
  return makePart(kit, `joint-${name}`, 'joint', { at: 'corner', corner: { x, y } }, shape, pose);
}

export const tubeId = (side: Face): string => `${side === 'front' || side === 'back' ? 'long' : 'short'}-tube-${side}`;

/** A tube's end leaves its socket towards the tube's middle. */
function socketsOf(kit: Kit, side: Face): Connection[] {
  return CORNERS.filter(({ x, y }) => x === side || y === side).map(({ name, x, sx, sy }) => ({
    is: 'socket', bar: tubeId(side), joint: `joint-${name}`, out: x === side ? [0, -sy, 0] : [-sx, 0, 0], depth: kit.joint.socketDepth,
  }));
}

function joiningsOf(side: Face): Joining[] {
  const tube = tubeId(side);
  return CORNERS.filter(({ x, y }) => x === side || y === side)
    .map(({ name }) => ({ by: 'socket', joint: `joint-${name}`, tube }));
}
