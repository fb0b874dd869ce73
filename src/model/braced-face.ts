import { placed } from './pose.ts';
import type { Model, Pose, Vec2, Vec3 } from './types.ts';
import { cross, dot, lengthOf, minus, unit } from './vectors.ts';

/** A bar of a face, from end to end of its axis, mm, and its outside, mm. */
export interface FaceBar {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly outside: number;
}

/** A cord of a face between the middles of its pegs, mm. */
export interface FaceCord {
  readonly low: Vec2;
  readonly high: Vec2;
}

/** A face that cords brace, seen from outside: mm to the right and up from the floor. Bars that lie in it, and the cords, the one nearest the eye last. */
export interface BracedFace {
  readonly bars: readonly FaceBar[];
  readonly cords: readonly FaceCord[];
  /** Whether heads of pins stand out of the face beside the pegs. */
  readonly hasPinHeads: boolean;
}

/** How far behind the cords a bar's axis lies at the most, and how far from a peg a pin's head at the most, mm. */
const BEHIND = 80;
const BESIDE = 70;
const PARALLEL = 1e-3;

/** The face of the cables told, which are hung along one way out; of no cable, or of those hung nowhere, throws a `RangeError`. */
export function bracedFace({ parts, connections }: Model, cables: readonly string[]): BracedFace {
  const hook = connections.find((each) => each.is === 'hook' && cables.includes(each.cable));
  if (hook?.is !== 'hook') throw new RangeError(`no cable is hung: ${cables.join(', ')}`);
  const { out } = hook;
  const right = unit(cross([-out[0], -out[1], -out[2]], [0, 0, 1]));
  const seen = (at: Vec3): Vec2 => [dot(at, right), at[2]];
  const found = cables.flatMap((id) => parts.filter((part) => part.id === id)).flatMap(({ shape, pose }) => (shape.form === 'cable' ? [endsOf(pose, 0, shape.length)] : []))
    .toSorted(([one], [other]) => dot(one, out) - dot(other, out));
  const depth = Math.min(...found.map(([at]) => dot(at, out)));
  const isBeside = (at: Vec3): boolean => found.flat().some((end) => lengthOf(minus(end, at)) < BESIDE);
  return {
    bars: parts.flatMap(({ shape, pose }) => {
      if (shape.form !== 'tube') return [];
      const ends = endsOf(pose, -shape.length / 2, shape.length / 2);
      const isInFace = ends.every((at) => depth - dot(at, out) > 0 && depth - dot(at, out) < BEHIND);
      return isInFace ? [{ from: seen(ends[0]), to: seen(ends[1]), outside: shape.outside }] : [];
    }),
    cords: found.map(([from, to]) => (from[2] <= to[2] ? { low: seen(from), high: seen(to) } : { low: seen(to), high: seen(from) })),
    hasPinHeads: parts.some(({ shape, pose }) => shape.form === 'pin' && isBeside(placed(pose, [0, 0, 0])) && Math.abs(Math.abs(dot(axisOf(pose), out)) - 1) < PARALLEL),
  };
}

const endsOf = (pose: Pose, from: number, to: number): readonly [Vec3, Vec3] => [placed(pose, [from, 0, 0]), placed(pose, [to, 0, 0])];
const axisOf = (pose: Pose): Vec3 => minus(placed(pose, [0, 0, 1]), placed(pose, [0, 0, 0]));
