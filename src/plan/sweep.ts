import { chained, FLAT, moved, undone, type Box3, type FlatPattern, type Placed, type Side, type Solids, type Vec3 } from '../model/index.ts';
import type { Motion } from './types.ts';

/** A part as it stands at one moment. */
export interface Standing extends Placed {
  readonly id: string;
}

/** Shared volume under this is rounding, mm³. */
const TOUCH = 1;
/** The stretch of a slide on which two boxes pass each other is tried in this many places and at its end, but not closer than this (mm). */
const TRIES_PER_MEETING = 8;
const CLOSEST_TRIES = 10;
const FOLD_TRIES = 18;
/** A tab meets what stands low under it only in the last degrees. */
const JUST_BEFORE_HOME = 0.985;

/** Those of the standing parts that a motion would run into. Empty when the way is free. */
export function blockers<Obstacle extends Standing>(motion: Motion, movers: readonly Standing[], standing: readonly Obstacle[], solids: Solids): readonly Obstacle[] {
  switch (motion.kind) {
    case 'slide': return slideBlockers(movers.filter(({ id }) => motion.parts.includes(id)), motion.by, standing, solids);
    case 'fold': return foldBlockers(movers.find(({ id }) => id === motion.panel), motion.side, standing, solids);
    case 'turn': return [];
  }
}

function slideBlockers<Obstacle extends Standing>(movers: readonly Placed[], by: Vec3, standing: readonly Obstacle[], solids: Solids): readonly Obstacle[] {
  return standing.filter((obstacle) => movers.some((mover) =>
    sweptNear(mover, by, obstacle, solids) && tryPlaces(mover, by, obstacle, solids).some((back) => {
      const [x, y, z] = by;
      const share = back / Math.hypot(...by);
      const pose = chained(moved([-x * share, -y * share, -z * share]), mover.pose);
      return solids.overlap({ shape: mover.shape, pose }, obstacle) > TOUCH;
    })));
}

/** How far back along the slide (mm, 0 is home) the mover is tried: evenly over the stretch where its box passes the obstacle's. */
function tryPlaces(mover: Placed, by: Vec3, obstacle: Placed, solids: Solids): readonly number[] {
  const [least, most] = reachAlong(mover, by, solids);
  const [near, far] = reachAlong(obstacle, by, solids);
  const from = Math.max(0, least - far);
  const to = Math.min(Math.hypot(...by), most - near);
  if (to < from) return [];
  const tries = Math.max(4, Math.min(TRIES_PER_MEETING, Math.ceil((to - from) / CLOSEST_TRIES)));
  return Array.from({ length: tries + 1 }, (_, index) => from + ((to - from) * index) / tries);
}

/** Where the box round a standing shape begins and ends along a direction, mm. */
function reachAlong(one: Placed, by: Vec3, solids: Solids): readonly [number, number] {
  const { least, most } = solids.box(one);
  const distance = Math.hypot(...by);
  const ends = [0, 1, 2].map((axis) => [least[axis] ?? 0, most[axis] ?? 0].map((end) => (end * (by[axis] ?? 0)) / distance));
  return [ends.reduce((sum, pair) => sum + Math.min(...pair), 0), ends.reduce((sum, pair) => sum + Math.max(...pair), 0)];
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

function foldBlockers<Obstacle extends Standing>(panel: Placed | undefined, side: Side, standing: readonly Obstacle[], solids: Solids): readonly Obstacle[] {
  if (panel?.shape.form !== 'panel') return [];
  // The rest of the panel lies still: its moving flap is tried alone.
  const { shape, pose } = panel;
  const tries = [...Array.from({ length: FOLD_TRIES }, (_, index) => (index + 1) / FOLD_TRIES), JUST_BEFORE_HOME];
  const stages = tries.map((stage): Placed => ({ pose, shape: { ...shape, folding: { ...FLAT, [side]: stage }, split: { side, piece: 'flap' } } }));
  const back = undone(pose);
  return standing.filter((obstacle) =>
    flapReaches(shape.pattern, side, solids.box({ shape: obstacle.shape, pose: chained(back, obstacle.pose) }))
    && stages.some((stage) => solids.overlap(stage, obstacle) > TOUCH));
}

/** Whether a box in panel coordinates stands where the flap of this side can come: outside the folded tab's edge. */
function flapReaches(pattern: FlatPattern, side: Side, box: Box3): boolean {
  const axis = side === 'left' || side === 'right' ? 0 : 1;
  const edge = pattern.axes[axis] - (pattern.blank[axis] / 2 - pattern.axes[axis]);
  return side === 'left' || side === 'front' ? box.least[axis] < -edge : box.most[axis] > edge;
}
