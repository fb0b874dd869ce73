import type { Connection, Model, Solids } from '../../model/index.ts';
import { benchDraft, markJobs, plateJobs, tubeJobs, wrappedJobs, type BenchJob } from './bench.ts';
import { hasBit, indicesOf } from './bits.ts';
import { groundOf, type Ground } from './ground.ts';
import { batchName, keyFor, ownerOf, type Naming } from './keys.ts';
import { batchesOf, timesOf, wholeLine, type BatchLine, type Line } from './line.ts';
import { solve, startSearch, type Search } from './search.ts';
import { draftsOf, partsIn, type Draft } from './steps.ts';
import type { Batch, FoundPlan, FoundStep } from './types.ts';

/** A step that waits for its number and, where another has the same, for a key of its own. */
type Unnumbered = Omit<FoundStep, 'number' | 'drilled'>;

/**
 * Finds the order in which an item is put together by taking it apart. Throws a RangeError when it comes apart in no way.
 * The same model gives the same plan.
 */
export function findPlan(model: Pick<Model, 'parts' | 'groups'>, connections: readonly Connection[], solids: Solids): FoundPlan {
  const ground = groundOf(model, connections, solids);
  const search = startSearch(ground);
  const up = upright(ground);
  const whole = wholeLine(search, up);
  const batches = namedBatches(search, whole, { parts: ground.units.parts, groups: model.groups });
  const steps = numbered(ground, orderedSteps(search, whole, batches, { parts: ground.units.parts, groups: model.groups }));
  return { steps, batches: batches.map(({ name, times, copies }): Batch => ({ name, times, copies: copies.map((copy) => partsIn(ground, copy)) })), reasons: [], cost: solve(search, ground.finished, 1).best[up] ?? 0 };
}

/** The finished item stands as it is used. */
function upright(ground: Ground): number {
  const up = ground.blocking.ways.findIndex(([, , z]) => z > 0.999);
  return up < 0 ? 0 : up;
}

interface NamedBatch extends BatchLine {
  readonly name: string;
  readonly times: number;
}

function namedBatches(search: Search, whole: Line, naming: Naming): readonly NamedBatch[] {
  const batches = batchesOf(search, whole);
  const times = timesOf(search, whole, batches);
  return batches.map((batch, index) => ({ ...batch, name: batchName(search.ground, naming, batch, index + 1), times: times.get(batch.form) ?? 1 }));
}

/** Bench work and batches first, each as it is needed, then the item as a whole. */
function orderedSteps(search: Search, whole: Line, batches: readonly NamedBatch[], naming: Naming): readonly Unnumbered[] {
  const { ground } = search;
  const panels = wrappedJobs(ground);
  const done = new Set<readonly BenchJob[]>();
  const bench = (jobs: readonly BenchJob[], batch: string | null, owner: string | null): readonly Unnumbered[] => jobs.map((job) => benchStep(job, naming, batch, owner));
  const panelsFirst = (batch: NamedBatch, index: number): readonly Unnumbered[] => {
    const later = batches.slice(index);
    return panels.filter((jobs) => !done.has(jobs) && later.find((each) => holds(ground, each, jobs))?.name === servedBy(batches, index, search)?.name).flatMap((jobs) => {
      done.add(jobs);
      const owning = later.find((each) => holds(ground, each, jobs)) ?? batch;
      return bench(jobs, owning.name, ownerOf(ground, naming, owning.copies));
    });
  };
  const made = batches.flatMap((batch, index) => [
    ...panelsFirst(batch, index),
    ...lineSteps(ground, batch, batch, naming),
  ]);
  const left = panels.filter((jobs) => !done.has(jobs)).flatMap((jobs) => bench(jobs, null, null));
  return [...bench(tubeJobs(ground), null, null), ...left, ...made, ...bench(plateJobs(ground), null, null), ...bench(markJobs(ground), null, null), ...lineSteps(ground, whole, null, naming)];
}

/** The batch that is the last to take what this one makes. */
function servedBy(batches: readonly NamedBatch[], index: number, search: Search): NamedBatch | undefined {
  const own = batches[index];
  if (own === undefined) return undefined;
  return [...batches.slice(index)].reverse().find((batch) => own.copies.some((copy) => batch.copies.some((other) => indicesOf(copy).every((at) => hasBit(other, at))))) ?? (search.left < 0 ? own : own);
}

const holds = (ground: Ground, batch: BatchLine, jobs: readonly BenchJob[]): boolean =>
  batch.copies.some((copy) => partsIn(ground, copy).some((id) => jobs.some(({ parts }) => parts.includes(id))));

function benchStep(job: BenchJob, naming: Naming, batch: string | null, owner: string | null): Unnumbered {
  const draft = benchDraft(job);
  return { ...draft, key: keyFor(naming, draft, owner, batch !== null), batch, times: job.times };
}

function lineSteps(ground: Ground, line: Line, batch: NamedBatch | null, naming: Naming): readonly Unnumbered[] {
  const owner = batch === null ? null : ownerOf(ground, naming, batch.copies);
  return line.buildings.flatMap((building) => draftsOf(ground, building)).map((draft: Draft): Unnumbered =>
    ({ ...draft, key: keyFor(naming, draft, owner, batch !== null), batch: batch?.name ?? null, times: batch?.times ?? 1 }));
}

/** Numbers the steps, tells like keys apart, and keeps count of what is drilled. */
function numbered(ground: Ground, steps: readonly Unnumbered[]): readonly FoundStep[] {
  const keys = new Map<string, number>();
  const drilled = new Set<string>();
  return steps.map((step, index): FoundStep => {
    const before = [...drilled];
    for (const pin of step.drillsFor) heldBy(ground, pin).forEach((id) => drilled.add(id));
    const count = (keys.get(step.key) ?? 0) + 1;
    keys.set(step.key, count);
    return { ...step, number: index + 1, key: count === 1 ? step.key : `${step.key}-${count}`, drilled: before };
  });
}

const heldBy = (ground: Ground, pin: string): readonly string[] => {
  const unit = ground.units.of.get(pin);
  return unit?.is === 'fastener' ? unit.connection.holds : [];
};

