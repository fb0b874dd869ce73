import { type Folding, type Part, type Solids } from '../model/index.ts';
import { foldedOnly, type Job, type Stage } from './jobs.ts';
import { blockers, type Standing } from './sweep.ts';
import type { OrderReason } from './types.ts';

/** What must come before what, whatever anybody wishes: parts that would be in the way (told first, they explain most), and parts that are needed. */
export function mustHold(jobs: readonly Job[], stage: Stage, solids: Solids): readonly OrderReason[] {
  return [...lockedOut(jobs, stage, solids), ...neededFirst(jobs)];
}

function neededFirst(jobs: readonly Job[]): OrderReason[] {
  return jobs.flatMap((then) => jobs
    .filter((first) => first.key !== then.key && first.places.some((id) => then.needs.includes(id)))
    .map((first) => ({ first: first.key, then: then.key, rule: 'needed', parts: [] })));
}

/** A job whose motion would run into what another job leaves behind must come before that other job. */
function lockedOut(jobs: readonly Job[], stage: Stage, solids: Solids): OrderReason[] {
  return jobs.filter((job) => job.motions.length > 0).flatMap((first) => {
    const others = jobs.filter((job) => job.key !== first.key);
    const met = inTheWay(first, others.flatMap((job) => leftBehind(job, stage, first)), stage, solids, stage.folding);
    return others.flatMap((then) => {
      const parts = idsIn(met.filter(({ by }) => by === then));
      return parts.length === 0 ? [] : [{ first: first.key, then: then.key, rule: 'geometry', parts }];
    });
  });
}

/** A part as a job leaves it. */
interface Left extends Standing {
  readonly by: Job;
}

/** What the motions of a job would run into. */
const inTheWay = <Obstacle extends Standing>(job: Job, standing: readonly Obstacle[], stage: Stage, solids: Solids, folding: Folding): readonly Obstacle[] =>
  job.motions.flatMap((motion) => {
    const moving = motion.kind === 'turn' ? [] : motion.kind === 'fold' ? [motion.panel] : motion.parts;
    const movers = moving.flatMap((id) => standingPart(stage, id, folding));
    return blockers(motion, movers, standing.filter(({ id }) => !moving.includes(id)), solids);
  });

const idsIn = (standing: readonly Standing[]): string[] => [...new Set(standing.map(({ id }) => id))].sort();

/** The parts a job puts in place, and the flap it folds, as they stand after it. */
function leftBehind(job: Job, stage: Stage, seenBy: Job): readonly Left[] {
  const folds = job.motions.flatMap((motion) => (motion.kind === 'fold' ? [motion] : []));
  const selfFold = seenBy.motions.some((motion) => motion.kind === 'fold');
  return [
    ...job.places.flatMap((id) => standingPart(stage, id, stage.folding)),
    ...(selfFold ? [] : folds.flatMap(({ panel, side }) => standingPart(stage, panel, foldedOnly(side, 1)))),
  ].map((left) => ({ ...left, by: job }));
}

/** A part as it stands, the panel folded as told; none where the stage has no such part. */
function standingPart(stage: Stage, id: string, folding: Folding): readonly Standing[] {
  const part = stage.parts.get(id);
  return part === undefined ? [] : [{ id, shape: folded(part, folding), pose: part.pose }];
}

const folded = ({ shape }: Part, folding: Folding): Part['shape'] =>
  (shape.form === 'panel' ? { ...shape, folding } : shape);

/** A job in its place whose motion is not free, and the parts it meets; or the panel it folds that is not there yet. */
export interface Clash {
  readonly key: string;
  readonly parts: readonly string[];
}

/** Walks through the jobs in order and tries every motion against all that stands there by then. */
export function clashesInOrder(jobs: readonly Job[], stage: Stage, solids: Solids): readonly Clash[] {
  const standing = new Set<string>();
  let folding = stage.folding;
  const clashes: Clash[] = [];
  for (const job of jobs) {
    const present = [...standing].flatMap((id) => standingPart(stage, id, folding));
    const missing = job.motions.flatMap((motion) => (motion.kind === 'fold' && !standing.has(motion.panel) ? [motion.panel] : []));
    const parts = [...missing, ...idsIn(inTheWay(job, present, stage, solids, folding))];
    if (parts.length > 0) clashes.push({ key: job.key, parts });
    job.places.forEach((id) => standing.add(id));
    for (const motion of job.motions) if (motion.kind === 'fold') folding = { ...folding, [motion.side]: 1 };
  }
  return clashes;
}
