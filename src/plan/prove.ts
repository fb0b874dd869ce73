import { type Folding, type Part, type Placed, type Solids } from '../model/index.ts';
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
    const left = new Map(others.flatMap((job) => leftBehind(job, stage, first)));
    const met = inTheWay(first, left, stage, solids, stage.folding).map((place) => place.split(LEFT_BY) as [string, string]);
    return others.flatMap((then) => {
      const parts = met.filter(([, key]) => key === then.key).map(([id]) => id);
      return parts.length === 0 ? [] : [{ first: first.key, then: then.key, rule: 'geometry', parts }];
    });
  });
}

/** Between a part's id and the key of the job that left it so. */
const LEFT_BY = ' left by ';

const inTheWay = (job: Job, standing: Standing, stage: Stage, solids: Solids, folding: Folding): readonly string[] =>
  [...new Set(job.motions.flatMap((motion) => {
    const moving = motion.kind === 'turn' ? [] : motion.kind === 'fold' ? [motion.panel] : motion.parts;
    const movers = new Map(moving.flatMap((id) => entry(stage, id, folding)));
    const others = new Map([...standing].filter(([place]) => !moving.includes(place.split(LEFT_BY)[0] ?? place)));
    return blockers(motion, movers, others, solids);
  }))].sort();

/** The parts a job puts in place, and the flap it folds, as they stand after it. */
function leftBehind(job: Job, stage: Stage, seenBy: Job): [string, Placed][] {
  const folds = job.motions.flatMap((motion) => (motion.kind === 'fold' ? [motion] : []));
  const selfFold = seenBy.motions.some((motion) => motion.kind === 'fold');
  return [
    ...job.places.flatMap((id) => entry(stage, id, stage.folding)),
    ...(selfFold ? [] : folds.flatMap(({ panel, side }) => entry(stage, panel, foldedOnly(side, 1)))),
  ].map(([id, placed]) => [`${id}${LEFT_BY}${job.key}`, placed]);
}

/** A part as it stands, the panel folded as told. */
function entry(stage: Stage, id: string, folding: Folding): [string, Placed][] {
  const part = stage.parts.get(id);
  return part === undefined ? [] : [[id, { shape: folded(part, folding), pose: part.pose }]];
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
    const present = new Map([...standing].flatMap((id) => entry(stage, id, folding)));
    const missing = job.motions.flatMap((motion) => (motion.kind === 'fold' && !standing.has(motion.panel) ? [motion.panel] : []));
    const parts = [...missing, ...inTheWay(job, present, stage, solids, folding)];
    if (parts.length > 0) clashes.push({ key: job.key, parts });
    job.places.forEach((id) => standing.add(id));
    for (const motion of job.motions) if (motion.kind === 'fold') folding = { ...folding, [motion.side]: 1 };
  }
  return clashes;
}
