import { chained, FLAT, isToldByPoints, standstill, undone, WRAPPED, type Model, type Solids } from '../model/index.ts';
import type { OrderWish } from '../read/index.ts';
import { WORK } from '../work/facts.ts';
import { runJobs } from './deck-jobs.ts';
import { itemJobs } from './item-jobs.ts';
import { directionOf, sideOf, stageOf, type Job } from './jobs.ts';
import { orderJobs, type Ordering } from './order.ts';
import { clashesInOrder, mustHold, type Clash } from './prove.ts';
import { rulesFor, sidesInOrder } from './rules.ts';
import { standingOf } from './standings.ts';
import { byKind } from './by-kind.ts';
import { toldPlan } from './found/told.ts';
import type { Batch, FlapName, Motion, NewPart, Plan, Step } from './types.ts';

/**
 * The steps of one size variant in order, each motion proven free. Throws a FaultError when a wish of the
 * designer is refused, a RangeError when no order leaves every motion free.
 */
export function planItem(model: Model, wishes: readonly OrderWish[], solids: Solids): Plan {
  // Items of decks, frames and posts have their jobs listed; of all others the order is found by taking them apart.
  if (isToldByPoints(model)) return toldPlan(model, wishes, solids);
  const ordering = orderedJobs(model, wishes, solids);
  const clashes = provenClashes(model, ordering.jobs, solids);
  if (clashes.length > 0) {
    throw new RangeError(`${model.item} ${model.size}: no free way for ${clashes.map((clash) => `${clash.key} (${clash.parts.join(', ')})`).join('; ')}`);
  }
  return { steps: stepsOf(model, ordering.jobs), batches: batchesOf(model), reasons: ordering.reasons };
}

const runsOf = (model: Model): readonly string[] => [...new Set(model.groups.map((group) => group.piece))];

/** The jobs of every run and of the item in one order. */
export function orderedJobs(model: Model, wishes: readonly OrderWish[], solids: Solids): Ordering {
  const runs = runsOf(model).map((run) => ({ jobs: runJobs(model, run), stage: runStage(model, run) }));
  const whole = itemJobs(model);
  const jobs = [...whole.slice(0, 1), ...runs.flatMap((run) => run.jobs), ...whole.slice(1)];
  const must = [
    ...runs.flatMap((run) => mustHold(run.jobs, run.stage, solids)),
    ...mustHold(whole, itemStage(model), solids),
  ];
  return orderJobs(jobs, must, wishes, rulesFor(model.pattern, sidesInOrder(model.pattern, wishes)));
}

/** The parts of a run's first sub-assembly as it stands while it is built. */
function runStage(model: Model, run: string): ReturnType<typeof stageOf> {
  const group = model.groups.find((candidate) => candidate.piece === run);
  const back = undone(group?.pose ?? standstill);
  return stageOf(model.parts.filter((part) => part.group === group?.name), FLAT, (pose) => chained(back, pose));
}

const itemStage = (model: Model): ReturnType<typeof stageOf> => stageOf(model.parts, WRAPPED, (pose) => pose);

/** Jobs whose motions are not free in this order. */
export function provenClashes(model: Model, jobs: readonly Job[], solids: Solids): readonly Clash[] {
  return [
    ...runsOf(model).flatMap((run) => clashesInOrder(jobs.filter((job) => job.run === run), runStage(model, run), solids)),
    ...clashesInOrder(jobs.filter((job) => job.run === null), itemStage(model), solids),
  ];
}

function stepsOf(model: Model, jobs: readonly Job[]): readonly Step[] {
  const steps: Step[] = [];
  const present: string[] = [];
  const drilled: string[] = [];
  const folded = new Map<string | null, readonly FlapName[]>();
  const joined = new Set<string>();
  jobs.forEach((job, index) => {
    const brought = job.brings ?? job.places;
    const fresh = WORK[job.action].joins ? brought : brought.filter((id) => !present.includes(id));
    for (const motion of job.motions) if (motion.kind === 'fold') folded.set(job.run, [...(folded.get(job.run) ?? []), { panel: motion.panel, flap: motion.flap }]);
    const times = job.run === null ? job.times : model.groups.filter((group) => group.piece === job.run).length;
    // What a run has made comes to the item when it is stood up or set in, not before.
    const there = present.filter((id) => (job.run === null ? joined.has(id) : runOf(model, id) === job.run));
    steps.push(stepOf(model, job, index + 1, times, fresh, there, folded.get(job.run) ?? [], [...drilled]));
    drilled.push(...(job.drills?.parts ?? []));
    if (job.run === null) fresh.forEach((id) => joined.add(id));
    present.push(...fresh.filter((id) => !present.includes(id)));
  });
  return steps;
}

/** Slides of a run are told in its building pose while they are proven; a step tells them as the finished item lies. */
function inItem(model: Model, job: Job, motion: Motion): Motion {
  const group = model.groups.find((candidate) => candidate.piece === job.run);
  return motion.kind !== 'slide' || group === undefined ? motion : { ...motion, by: directionOf(group.pose, motion.by) };
}

/** The run that a part is made in, or null. */
const runOf = (model: Model, id: string): string | null =>
  model.groups.find((group) => group.partIds.includes(id))?.piece ?? null;

function stepOf(model: Model, job: Job, number: number, times: number, fresh: readonly string[], present: readonly string[], folded: readonly FlapName[], drilled: readonly string[]): Step {
  const work = WORK[job.action];
  return {
    number,
    key: job.key,
    action: job.action,
    detail: job.detail,
    side: sideOf(job.detail),
    run: job.run,
    times,
    newParts: newPartsOf(model, job, fresh),
    present: present.filter((id) => !fresh.includes(id)),
    motions: job.motions.map((motion) => inItem(model, job, motion)),
    drilled,
    drillsFor: job.drills?.pins ?? [],
    folded: job.run === null ? allFlaps(model) : folded,
    held: [],
    props: [],
    toHand: byKind(model, ({ kind }) => kind === work.toHand),
    standing: standingOf(job, model),
    tools: work.tools,
    people: work.people,
    cautions: work.cautions,
    check: work.check,
    minutes: work.minutes * (work.shareOf?.(job.detail) ?? 1) * times,
    waits: work.waits,
  };
}

/** New parts by kind; a finished deck is no new part, it was made before. */
function newPartsOf(model: Model, job: Job, fresh: readonly string[]): readonly NewPart[] {
  if (WORK[job.action].joins) return [];
  return byKind(model, ({ id }) => fresh.includes(id));
}

const allFlaps = (model: Model): readonly FlapName[] => model.parts.flatMap(({ id, shape }) =>
  (shape.form === 'panel' ? shape.pattern.flaps.map(({ side }): FlapName => ({ panel: id, flap: side })) : []));

const batchesOf = (model: Model): readonly Batch[] => runsOf(model).map((name) => {
  const groups = model.groups.filter(({ piece }) => piece === name);
  return { name, times: groups.length, parts: groups[0]?.partIds ?? [], copies: groups.map(({ partIds }) => partIds) };
});
