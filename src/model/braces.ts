import type { Face, Kit } from '../read/index.ts';
import { facing } from './pose.ts';
import type { Joining, Part, Shape, Vec2, Vec3 } from './types.ts';
import { wrapOf } from './wrap.ts';

/** Free air between the widest bulge of a wrapped side and a cable, and between crossing cables, mm. */
const AIR = 1;
const CROSSING_AIR = 0.5;
/** A loop slips over the stud's head with this much play all round, mm. */
const LOOP_PLAY = 0.5;
const CABLE_MASS_PER_MM = 2e-5;

interface Braces {
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
}

interface FacePlane {
  readonly face: Face;
  readonly outwards: Vec3;
  /** Towards the face's own right, seen from outside. */
  readonly across: Vec3;
  readonly halfSpan: number;
  readonly out: number;
}

/** Crossed cables on the given faces, from the studs of the lowest deck to those of the highest (`levels`, mm). */
export function buildBraces(kit: Kit, axes: Vec2, levels: readonly number[], faces: readonly Face[], deckNames: readonly string[]): Braces {
  const low = Math.min(...levels);
  const high = Math.max(...levels);
  const parts: Part[] = [];
  const joinings: Joining[] = [];
  for (const face of faces) {
    const plane = planeOf(face, axes);
    [1, -1].forEach((rising, index) => {
      const id = `cable-${face}-${index + 1}`;
      parts.push(cable(kit, plane, id, low, high, rising, firstPlane(kit) + index * (kit.cable.diameter + CROSSING_AIR)));
      joinings.push({ by: id, parts: [id, studOf(plane, -rising, deckNames[0] ?? ''), studOf(plane, rising, deckNames[deckNames.length - 1] ?? '')] });
    });
  }
  return { parts, joinings };
}

/** How far outside the posts' axes the first cable runs clear of the wrapped sides, mm. */
function firstPlane(kit: Kit): number {
  const wrap = wrapOf(kit);
  return (wrap.radius + wrap.thickness) / Math.cos(wrap.creaseAngle / 2) + kit.cable.diameter / 2 + AIR;
}

function planeOf(face: Face, axes: Vec2): FacePlane {
  const [ax, ay] = axes;
  switch (face) {
    case 'back': return { face, outwards: [0, 1, 0], across: [-1, 0, 0], halfSpan: ax, out: ay };
    case 'front': return { face, outwards: [0, -1, 0], across: [1, 0, 0], halfSpan: ax, out: ay };
    case 'left': return { face, outwards: [-1, 0, 0], across: [0, -1, 0], halfSpan: ay, out: ax };
    case 'right': return { face, outwards: [1, 0, 0], across: [0, 1, 0], halfSpan: ay, out: ax };
  }
}

/** The joint at the end of a face that lies `towards` its right (1) or left (−1). A deck is built upside down: front and back change places. */
function studOf({ across, outwards, halfSpan, out }: FacePlane, towards: number, deck: string): string {
  const x = across[0] * towards * halfSpan + outwards[0] * out;
  const y = across[1] * towards * halfSpan + outwards[1] * out;
  return `${deck}/joint-${x < 0 ? 'left' : 'right'}-${y < 0 ? 'back' : 'front'}`;
}

function cable(kit: Kit, plane: FacePlane, id: string, low: number, high: number, rising: number, offset: number): Part {
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
  return { id, kind: 'cable', shape, pose: facing(start, direction, cross(outwards, direction), outwards), group: null, mass: length * CABLE_MASS_PER_MM };
}

const cross = (a: Vec3, b: Vec3): Vec3 =>
  [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
