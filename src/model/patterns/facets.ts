import { columnOf, facing } from '../pose.ts';
import type { Lug, Pattern, PatternFlap, Pose, Vec2, Vec3 } from '../types.ts';
import { cross, plus, times } from '../vectors.ts';
import { reachedAt, turnsAt } from './chain.ts';
import { alongSide, outwards } from './sides.ts';

const UP: Vec3 = [0, 0, 1];

/** A point of a flap's section (a outwards from the root line, b over the inner face) in panel coordinates, `along` the side. */
export const onSection = ({ side, root }: PatternFlap, along: number, [a, b]: Vec2): Vec3 =>
  plus(plus(times(outwards(side), root + a), times(alongSide(side), along)), times(UP, b));

/**
 * The place on a folded flap, `distance` from its root line and `along` its side: own x goes on outwards over the flap, own z
 * over its inner face, the origin lies on the inner face. In panel coordinates.
 */
export function facetPose(pattern: Pattern, flap: PatternFlap, distance: number, along: number, stage: number): Pose {
  const { at, heading } = reachedAt(pattern, flap.bends, turnsAt(flap.bends, flap.order, stage), distance);
  const out = outwards(flap.side);
  const x = plus(times(out, Math.cos(heading)), times(UP, Math.sin(heading)));
  const z = plus(times(out, -Math.sin(heading)), times(UP, Math.cos(heading)));
  return facing(onSection(flap, along, at), x, cross(z, x), z);
}

/** The place of a lug's pin, z over the lug's inner face, in panel coordinates. */
export function lugPinPose(pattern: Pattern, flap: PatternFlap, lug: Lug, pin: number, wallStage: number, stage: number): Pose {
  const { at: [a, b], heading } = reachedAt(pattern, lug.bends, turnsAt(lug.bends, [...lug.bends.keys()], stage), lug.pinLine);
  const pose = facetPose(pattern, flap, lug.pins[pin] ?? 0, 0, wallStage);
  const axis = (column: number): Vec3 => columnOf(pose, column);
  const [ax, ay] = alongSide(flap.side);
  const along: Vec3 = [lug.end * ax, lug.end * ay, 0];
  const over = axis(2);
  const mixed = (p: number, q: number): Vec3 => [0, 1, 2].map((place) => p * (along[place] ?? 0) + q * (over[place] ?? 0)) as unknown as Vec3;
  const origin = axis(3).map((value, place) => value + (mixed(a, b)[place] ?? 0));
  const z = mixed(-Math.sin(heading), Math.cos(heading));
  const y = axis(0);
  const x = cross(y, z);
  return [...x, 0, ...y, 0, ...z, 0, ...origin, 1];
}
