import type { Kit } from '../read/index.ts';
import { flatPattern } from './pattern.ts';
import { chained, facing, moved, turned } from './pose.ts';
import type { FlatPattern, Folding, Joining, Part, PartKind, Pose, Shape, Side, Vec2, Vec3 } from './types.ts';

/**
 * A deck in its building pose: the panel lies inner face up in the plane z = 0, the frame on it with the
 * tubes' axes at the wrap radius. Origin in the middle; x along the long tubes.
 */
export interface Deck {
  readonly pattern: FlatPattern;
  /** Half distances between the posts' axes. */
  readonly axes: Vec2;
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
}

/** The four corners, named by side along x and along y in the building pose. */
export const CORNERS = [
  { name: 'left-front', sx: -1, sy: -1 },
  { name: 'right-front', sx: 1, sy: -1 },
  { name: 'left-back', sx: -1, sy: 1 },
  { name: 'right-back', sx: 1, sy: 1 },
] as const;

export const WRAPPED: Folding = { left: 1, right: 1, front: 1, back: 1 };
export const FLAT: Folding = { left: 0, right: 0, front: 0, back: 0 };

/** Half distances between post axes for tubes of these lengths: a tube ends at the joint's stop. */
export const axesFor = (kit: Kit, width: number, depth: number): Vec2 =>
  [width / 2 + kit.joint.stop, depth / 2 + kit.joint.stop];

/** One deck of long tubes `width` and short tubes `depth` (mm). */
export function buildDeck(kit: Kit, width: number, depth: number): Deck {
  const axes = axesFor(kit, width, depth);
  const pattern = flatPattern(kit, axes);
  const tubes = frameTubes(kit, pattern, width, depth);
  const joints = frameJoints(kit, pattern);
  const panel = part('panel', 'panel', { form: 'panel', pattern, folding: WRAPPED }, chained(), panelMass(kit, pattern));
  const pins = pattern.flaps.flatMap((flap) => tabPins(kit, pattern, flap.side));
  return {
    pattern,
    axes,
    parts: [...joints, ...tubes, panel, ...pins],
    joinings: [...frameJoinings(), ...pins.map((pin) => ({ by: pin.id, parts: ['panel', pin.id] }))],
  };
}

const part = (id: string, kind: PartKind, shape: Shape, pose: Pose, mass: number): Part =>
  ({ id, kind, shape, pose, group: null, mass });

const tubeArea = (kit: Kit): number => {
  const inside = kit.tube.outsideDiameter - 2 * kit.tube.wall;
  return (Math.PI / 4) * (kit.tube.outsideDiameter ** 2 - inside ** 2);
};

/** A tube of this length from the kit's stock, undrilled. */
export const tubeShape = (kit: Kit, length: number): Extract<Shape, { form: 'tube' }> => ({
  form: 'tube',
  length,
  outside: kit.tube.outsideDiameter,
  inside: kit.tube.outsideDiameter - 2 * kit.tube.wall,
  holes: [],
});

export const tubeMass = (kit: Kit, length: number): number => length * tubeArea(kit) * kit.tube.density;

function frameTubes(kit: Kit, pattern: FlatPattern, width: number, depth: number): Part[] {
  const [ax, ay] = pattern.axes;
  const z = pattern.wrapRadius;
  const long = (side: Side, y: number): Part =>
    part(`long-tube-${side}`, 'long-tube', tubeShape(kit, width), moved([0, y, z]), tubeMass(kit, width));
  const short = (side: Side, x: number): Part =>
    part(`short-tube-${side}`, 'short-tube', tubeShape(kit, depth),
      chained(moved([x, 0, z]), turned([0, 0, 1], Math.PI / 2)), tubeMass(kit, depth));
  return [short('left', -ax), short('right', ax), long('front', -ay), long('back', ay)];
}

/** The joint's deck side looks down on the panel; its sockets point to the two neighbours. */
function frameJoints(kit: Kit, pattern: FlatPattern): Part[] {
  return CORNERS.map(({ name, sx, sy }) => {
    const at: Vec3 = [sx * pattern.axes[0], sy * pattern.axes[1], pattern.wrapRadius];
    const mirrored = sx * sy < 0;
    const inX: Vec3 = [-sx, 0, 0];
    const inY: Vec3 = [0, -sy, 0];
    const pose = mirrored ? facing(at, inX, inY, [0, 0, -1]) : facing(at, inY, inX, [0, 0, -1]);
    const shape: Shape = {
      form: 'joint',
      joint: kit.joint,
      pinDiameter: kit.jointPin.diameter,
      drilled: mirrored ? 'y' : 'x',
    };
    return part(`joint-${name}`, 'joint', shape, pose, kit.joint.mass);
  });
}

const panelMass = (kit: Kit, pattern: FlatPattern): number => {
  const notched = pattern.blank[0] * pattern.blank[1] - 4 * pattern.notch[0] * pattern.notch[1];
  return notched * pattern.thickness * kit.panel.density;
};

/** Pins of one side, both ends first. The head stands on the folded tab. */
function tabPins(kit: Kit, pattern: FlatPattern, side: Side): Part[] {
  const shape: Shape = { form: 'pin', ...kit.panelPin };
  return pattern.holes.filter((hole) => hole.in === 'base' && hole.side === side).map(({ at }, index) =>
    part(`panel-pin-${side}-${index + 1}`, 'panel-pin', shape, moved([at[0], at[1], pattern.thickness + HEAD_LIFT]), 0.003));
}

/** The tab lies a hair over the panel, and the head a hair over the tab. */
const HEAD_LIFT = 0.05;

const frameJoinings = (): Joining[] => CORNERS.flatMap(({ name }) => {
  const [x, y] = name.split('-');
  return [
    { by: `joint-${name}`, parts: [`joint-${name}`, `short-tube-${x}`] },
    { by: `joint-${name}`, parts: [`joint-${name}`, `long-tube-${y}`] },
  ];
});
