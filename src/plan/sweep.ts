import { chained, FLAT, moved, undone, type Box3, type FlatPattern, type Placed, type Side, type Solids, type Vec3 } from '../model/index.ts';
import type { Motion } from './types.ts';

/** Parts as they stand at one moment, by id. */
export type Standing = ReadonlyMap<string, Placed>;

/** Shared volume under this is rounding, mm³. */
export const TOUCH = 1;
/**
 * Two solids that meet along a slide do so over about the sum of their lengths along it; a try every eighth of
 * that, but not closer than this (mm), cannot miss them.
 */
const TRIES_PER_MEETING = 8;
const CLOSEST_TRIES = 10;
const FOLD_TRIES = 18;
/** A tab meets what stands low under it only in the last degrees. */
const JUST_BEFORE_HOME = 0.985;

/** Ids of those standing parts that a motion would run into, in order of their ids. Empty when the way is free. */
export function blockers(motion: Motion, movers: Standing, standing: Standing, solids: Solids): readonly string[] {
  switch (motion.kind) {
    case 'slide': return slideBlockers(motion.parts.flatMap((id) => movers.get(id) ?? []), motion.by, standing, solids);
    case 'fold': return foldBlockers(movers.get(motion.panel), motion.side, standing, solids);
    case 'turn': return [];
  }
}

function slideBlockers(movers: readonly Placed[], by: Vec3, standing: Standing, solids: Solids): readonly string[] {
  return [...standing].filter(([, obstacle]) => movers.some((mover) =>
    sweptNear(mover, by, obstacle, solids) && tryPlaces(mover, by, obstacle, solids).some((back) => {
      const [x, y, z] = by;
      const pose = chained(moved([-x * back, -y * back, -z * back]), mover.pose);
      return solids.overlap({ shape: mover.shape, pose }, obstacle) > TOUCH;
    }))).map(([id]) => id).sort();
}

/** How far back along the slide, as shares of it from 1 down, the mover is tried; just before its place and there as well. */
function tryPlaces(mover: Placed, by: Vec3, obstacle: Placed, solids: Solids): readonly number[] {
  const step = Math.max(CLOSEST_TRIES, (lengthAlong(mover, by, solids) + lengthAlong(obstacle, by, solids)) / TRIES_PER_MEETING);
  const distance = Math.hypot(...by);
  const tries = Math.max(4, Math.ceil(distance / step));
  return [...Array.from({ length: tries }, (_, index) => 1 - index / tries), CLOSEST_TRIES / 2 / distance, 0];
}

/** Length of the box round a standing shape along a direction, mm. */
function lengthAlong(one: Placed, by: Vec3, solids: Solids): number {
  const { least, most } = solids.box(one);
  const distance = Math.hypot(...by);
  return [0, 1, 2].reduce((sum, axis) => sum + Math.abs((by[axis] ?? 0) / distance) * ((most[axis] ?? 0) - (least[axis] ?? 0)), 0);
}

/** Whether the box round the whole way of a mover meets the box round the obstacle. */
function sweptNear(mover: Placed, by: Vec3, obstacle: Placed, solids: Solids): boolean {
  const way = solids.box(mover);
  const other = solids.box(obstacle);
  return [0, 1, 2].every((axis) => {
    const travel = by[axis] ?? 0;
    const least = (way.least[axis] ?? 0) - Math.max(0, travel);
    const most = (way.most[axis] ?? 0) - Math.min(0, travel);
    return least <= (other.most[axis] ?? 0) && (other.least[axis] ?? 0) <= most;
  });
}

function foldBlockers(panel: Placed | undefined, side: Side, standing: Standing, solids: Solids): readonly string[] {
  if (panel?.shape.form !== 'panel') return [];
  // The other flaps lie still, away from whatever this one can meet: tried flat, one set of shapes serves all states.
  const { shape, pose } = panel;
  const tries = [...Array.from({ length: FOLD_TRIES }, (_, index) => (index + 1) / FOLD_TRIES), JUST_BEFORE_HOME];
  const stages = tries.map((stage): Placed => ({ pose, shape: { ...shape, folding: { ...FLAT, [side]: stage } } }));
  const back = undone(pose);
  return [...standing].filter(([, obstacle]) =>
    flapReaches(shape.pattern, side, solids.box({ shape: obstacle.shape, pose: chained(back, obstacle.pose) }))
    && stages.some((stage) => solids.overlap(stage, obstacle) > TOUCH)).map(([id]) => id).sort();
}

/** Whether a box in panel coordinates stands where the flap of this side can come: outside the folded tab's edge. */
function flapReaches(pattern: FlatPattern, side: Side, box: Box3): boolean {
  const axis = side === 'left' || side === 'right' ? 0 : 1;
  const edge = pattern.axes[axis] - (pattern.blank[axis] / 2 - pattern.axes[axis]);
  return side === 'left' || side === 'front' ? box.least[axis] < -edge : box.most[axis] > edge;
}
