import { chained, moved, type Folding, type Placed, type Solids, type Vec3 } from '../model/index.ts';
import type { Motion } from './types.ts';

/** Parts as they stand at one moment, by id. */
export type Standing = ReadonlyMap<string, Placed>;

/** Shared volume under this is rounding, mm³. */
export const TOUCH = 1;
/** Longest travel between two tries of a slide, mm, and tries of a fold. */
const SLIDE_STEP = 15;
const FOLD_TRIES = 24;

/** Ids of those standing parts that a motion would run into, in order of their ids. Empty when the way is free. */
export function blockers(motion: Motion, movers: Standing, standing: Standing, solids: Solids): readonly string[] {
  switch (motion.kind) {
    case 'slide': return slideBlockers(motion.parts.flatMap((id) => movers.get(id) ?? []), motion.by, standing, solids);
    case 'fold': return foldBlockers(movers.get(motion.panel), motion.side, standing, solids);
    case 'hang':
    case 'turn': return [];
  }
}

function slideBlockers(movers: readonly Placed[], by: Vec3, standing: Standing, solids: Solids): readonly string[] {
  const distance = Math.hypot(...by);
  const tries = Math.max(4, Math.ceil(distance / SLIDE_STEP));
  const backs = Array.from({ length: tries }, (_, index) => 1 - index / tries);
  return [...standing].filter(([, obstacle]) => movers.some((mover) =>
    sweptNear(mover, by, obstacle, solids) && backs.some((back) => {
      const [x, y, z] = by;
      const pose = chained(moved([-x * back, -y * back, -z * back]), mover.pose);
      return solids.overlap({ shape: mover.shape, pose }, obstacle) > TOUCH;
    }))).map(([id]) => id).sort();
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

function foldBlockers(panel: Placed | undefined, side: keyof Folding, standing: Standing, solids: Solids): readonly string[] {
  if (panel?.shape.form !== 'panel') return [];
  const { shape, pose } = panel;
  const stages = Array.from({ length: FOLD_TRIES + 1 }, (_, index): Placed =>
    ({ pose, shape: { ...shape, folding: { ...shape.folding, [side]: index / FOLD_TRIES } } }));
  return [...standing].filter(([, obstacle]) =>
    stages.some((stage) => solids.overlap(stage, obstacle) > TOUCH)).map(([id]) => id).sort();
}
