import { chained, dot, lengthOf, minus, placed, undone, type Model, type Part, type Pose, type Vec3 } from '../../model/index.ts';
import { turnedBy } from '../kit/directions.ts';

/** Places are told apart from this distance on, mm. */
const GRAIN = 1;
/** Directions are told apart from this cosine on. */
const ALIKE = 0.9999;

/** The motions that lead one group of parts onto another that is the same sub-assembly, or onto itself; none when it is not the same. */
export function motionsOnto(model: Model, from: readonly string[], to: readonly string[]): readonly Pose[] {
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const ofIds = (ids: readonly string[]): readonly Part[] => ids.flatMap((id) => parts.get(id) ?? []);
  const [own, others] = [ofIds(from), ofIds(to)];
  const anchor = anchorOf(own);
  if (anchor === undefined) return [];
  return others.filter(({ kind }) => kind === anchor.kind)
    .map((other) => chained(other.pose, undone(anchor.pose)))
    .filter((motion) => own.every((part) => others.some((other) => isOnto(part, other, motion))));
}

/** A part of the rarest kind that shows which way round it is. */
function anchorOf(parts: readonly Part[]): Part | undefined {
  const count = ({ kind }: Part): number => parts.filter((part) => part.kind === kind).length;
  return parts.filter(({ shape: { form } }) => form !== 'tube' && form !== 'cable').toSorted((a, b) => count(a) - count(b))[0];
}

function isOnto(part: Part, other: Part, motion: Pose): boolean {
  if (part.kind !== other.kind) return false;
  const pose = chained(motion, part.pose);
  const isThere = lengthOf(minus(placed(pose, [0, 0, 0]), placed(other.pose, [0, 0, 0]))) < GRAIN;
  return isThere && liesAlike(part, pose, other.pose);
}

/** A tube looks the same however it is rolled and whichever end is first; of all else every axis counts. */
function liesAlike({ shape: { form } }: Part, one: Pose, other: Pose): boolean {
  const along = (axis: Vec3): number => dot(turnedBy(one, axis), turnedBy(other, axis));
  if (form === 'tube' || form === 'cable') return Math.abs(along([1, 0, 0])) > ALIKE;
  return along([1, 0, 0]) > ALIKE && along([0, 0, 1]) > ALIKE;
}
