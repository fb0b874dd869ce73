import type { Face, Kit } from '../read/index.ts';
import { faceTurn, type FaceTurn } from './faces.ts';
import { CORNERS } from './frame.ts';
import { jointAt } from './levels.ts';
import { makePart } from './make-part.ts';
import { facing } from './pose.ts';
import type { Connection, Group, Joining, Part, Shape, Vec2, Vec3 } from './types.ts';
import { wrapOf } from './wrap.ts';

/** Free air between the widest bulge of a wrapped side and a cable, and between crossing cables, mm. */
const AIR = 1;
const CROSSING_AIR = 0.5;
/** A loop slips over the stud's head with this much play all round, mm. */
const LOOP_PLAY = 0.5;

interface Braces {
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
  readonly connections: readonly Connection[];
}

/** A face to brace, from the joints of one group to those of a higher one. */
export interface BracedFace {
  readonly face: Face;
  readonly low: Group;
  readonly high: Group;
}

/** Crossed cables on the given faces, round the studs of their lower and upper joints. */
export function buildBraces(kit: Kit, axes: Vec2, faces: readonly BracedFace[], parts: readonly Part[]): Braces {
  return faces.map(({ face, low, high }) => crossed(kit, faceTurn(face, axes), low, high, parts, axes))
    .reduce<Braces>((all, one) => ({
      parts: [...all.parts, ...one.parts], joinings: [...all.joinings, ...one.joinings], connections: [...all.connections, ...one.connections],
    }), { parts: [], joinings: [], connections: [] });
}

function crossed(kit: Kit, turn: FaceTurn, low: Group, high: Group, parts: readonly Part[], axes: Vec2): Braces {
  const cables = [1, -1].map((rising, index) => {
    const id = `cable-${turn.face}-${index + 1}`;
    const offset = firstPlane(kit) + index * (kit.cable.diameter + CROSSING_AIR);
    const joints = [studOf(turn, -rising, low, parts, axes), studOf(turn, rising, high, parts, axes)] as const;
    const joining: Joining = { by: 'cable', cable: id, joints };
    const hooks = joints.map((joint): Connection => ({ is: 'hook', cable: id, joint, out: turn.outwards }));
    return { part: cable(kit, turn, id, index + 1, low.level, high.level, rising, offset), joining, hooks };
  });
  return { parts: cables.map((each) => each.part), joinings: cables.map((each) => each.joining), connections: cables.flatMap((each) => each.hooks) };
}

/** How far outside the posts' axes the first cable runs clear of the wrapped sides, mm. */
function firstPlane(kit: Kit): number {
  const wrap = wrapOf(kit);
  return wrap.path.bulge + kit.cable.diameter / 2 + AIR;
}

/** The joint at the end of a face that lies towards its right (1) or left (−1). */
function studOf({ across, outwards, halfSpan, out }: FaceTurn, towards: number, group: Group, parts: readonly Part[], axes: Vec2): string {
  const x = across[0] * towards * halfSpan + outwards[0] * out;
  const y = across[1] * towards * halfSpan + outwards[1] * out;
  const corner = CORNERS.find(({ sx, sy }) => sx * x > 0 && sy * y > 0);
  return corner === undefined ? '' : jointAt(corner, group, parts, axes);
}

function cable(kit: Kit, plane: FaceTurn, id: string, index: number, low: number, high: number, rising: number, offset: number): Part {
  const run = 2 * plane.halfSpan;
  const rise = high - low;
  const length = Math.hypot(run, rise);
  const { across, outwards } = plane;
  const direction: Vec3 = [(rising * across[0] * run) / length, (rising * across[1] * run) / length, rise / length];
  const start: Vec3 = [
    -rising * across[0] * plane.halfSpan + outwards[0] * (plane.out + offset),
    -rising * across[1] * plane.halfSpan + outwards[1] * (plane.out + offset),
    low,
  ];
  const shape: Shape = { form: 'cable', diameter: kit.cable.diameter, length, loopInside: kit.joint.studHeadDiameter / 2 + LOOP_PLAY };
  return makePart(kit, id, 'cable', { at: 'face', face: plane.face, index }, shape, facing(start, direction, cross(outwards, direction), outwards));
}

const cross = (a: Vec3, b: Vec3): Vec3 =>
  [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
