import type { Model, Solids } from '../../model/index.ts';
import { benchDraft, plateJobs, tubeJobs, wrappedJobs, type BenchJob } from './bench.ts';
import { hasBit, indicesOf, meets } from './bits.ts';
import { boxDrafts } from './box-steps.ts';
import { groundOf, type Ground } from './ground.ts';
import { batchName, keyFor, ownerOf, type Naming } from './keys.ts';
import { batchesOf, timesOf, wholeLine, type BatchLine, type Line } from './line.ts';
import { calledAsBefore, toldApart } from './like-keys.ts';
import { mustHold, practised, type Told } from './reasons.ts';
import { solve, startSearch, type Search, type Wanted } from './search.ts';
import { draftsOf, partsIn } from './steps.ts';
import { stuckIn } from './stuck.ts';
import type { Batch, FoundPlan, FoundStep } from './types.ts';
import { checkWishes, isKept, refusalOf, refuseUnkept, wantedBy } from './wishes.ts';
import { NoOrder } from '../no-order.ts';
import type { OrderReason } from '../types.ts';
import type { OrderWish } from '../../read/index.ts';

/** A step that waits for its number. */
type Unnumbered = Omit<FoundStep, 'number' | 'drilled'>;

/** A step with the building that it tells. */
type Placed = Told & { readonly step: Unnumbered };

/** An order that was found, before the designer's wishes are looked at; steps alike still share their keys. */
interface Found {
  readonly placed: readonly Placed[];
  readonly batches: readonly NamedBatch[];
  readonly cost: number;
}

/**
 * Finds the order in which an item is put together by taking it apart, and keeps to the designer's wishes. Throws a
 * FaultError when a wish is refused, a NoOrder that names what is stuck when the item comes apart in no way. The same model gives the same plan.
 */
export function findPlan(model: Pick<Model, 'parts' | 'groups' | 'connections'>, wishes: readonly OrderWish[], solids: Solids): FoundPlan {
  const ground = groundOf(model, model.connections, solids);
  const naming = { parts: ground.units.parts, groups: model.groups };
  const first = foundAtAll(ground, naming);
  const usual = { ...first, placed: toldApart(first.placed) };
  const must = mustHold(ground, usual.placed);
  checkWishes(wishes, usual.placed, must);
  const kept = wishes.every((wish) => isKept(wish, usual.placed.map(({ step }) => step.key))) ? usual : wished(ground, naming, first, wishes);
  return planOf(ground, kept, wishes, kept === usual ? must : mustHold(ground, kept.placed));
}

/** The order without wishes; where there is none, the fault names what is stuck. */
function foundAtAll(ground: Ground, naming: Naming): Found {
  try {
    return found(ground, naming, []);
  } catch (error) {
    throw error instanceof NoOrder ? stuckIn(ground) ?? error : error;
  }
}

/** The order found anew with the wishes; what is done on the bench is just moved, and so is what is made by itself. */
function wished(ground: Ground, naming: Naming, usual: Found, wishes: readonly OrderWish[]): Found {
  const before = toldApart(usual.placed);
  const again = foundOrNull(ground, naming, wantedBy(ground, wishes, before, usual.batches));
  if (again === null) throw refusalOf(wishes.filter((wish) => !isKept(wish, before.map(({ step }) => step.key))));
  const called = calledAsBefore(again.placed, usual.placed);
  const placed = sorted(called, again.batches, mustHold(ground, called), wishes);
  refuseUnkept(wishes, placed.map(({ step }) => step.key));
  return { ...again, placed };
}

/** Null when no order keeps to what is wanted. */
function foundOrNull(ground: Ground, naming: Naming, wanted: readonly Wanted[]): Found | null {
  try {
    return found(ground, naming, wanted);
  } catch (error) {
    if (error instanceof NoOrder) return null;
    throw error;
  }
}

/** Takes, again and again, the first step that waits for no other. */
function sorted(placed: readonly Placed[], batches: readonly NamedBatch[], must: readonly OrderReason[], wishes: readonly OrderWish[]): readonly Placed[] {
  const left = [...placed];
  const done: Placed[] = [];
  const links = [...must, ...wishes];
  while (left.length > 0) {
    const isNext = (one: Placed, index: number): boolean => !links.some(({ first, then }) => then === one.step.key && left.some((other) => other.step.key === first))
      && !left.slice(0, index).some((other) => isInLine(one, other, batches));
    done.push(...left.splice(Math.max(0, left.findIndex(isNext)), 1));
  }
  return done;
}

/** What is put together keeps its order, but for two things that are made each by itself. */
function isInLine({ step: one }: Placed, { step: other }: Placed, batches: readonly NamedBatch[]): boolean {
  if (one.onBench || other.onBench) return false;
  const [own, its] = [one, other].map(({ batch }) => batches.find(({ name }) => name === batch));
  return own === undefined || its === undefined || own === its || own.copies.some((copy) => its.copies.some((each) => meets(copy, each)));
}

function found(ground: Ground, naming: Naming, wanted: readonly Wanted[]): Found {
  const search = startSearch(ground, wanted);
  const up = upright(ground);
  const whole = wholeLine(search, up);
  const batches = namedBatches(search, whole, naming);
  return { placed: orderedSteps(search, whole, batches, naming), batches, cost: solve(search, ground.finished, 1).best[up] ?? 0 };
}

function planOf(ground: Ground, { placed, batches, cost }: Found, wishes: readonly OrderWish[], must: readonly OrderReason[]): FoundPlan {
  return {
    steps: numbered(placed.map(({ step }) => step)),
    batches: batches.map(({ name, times, copies }): Batch => ({ name, times, copies: copies.map((copy) => partsIn(ground, copy)) })),
    reasons: [...must, ...wishes.map(({ first, then }): OrderReason => ({ first, then, rule: 'designer', parts: [] })), ...practised(placed)],
    cost,
  };
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
function orderedSteps(search: Search, whole: Line, batches: readonly NamedBatch[], naming: Naming): readonly Placed[] {
  const { ground } = search;
  const panels = wrappedJobs(ground);
  const done = new Set<readonly BenchJob[]>();
  const bench = (jobs: readonly BenchJob[], batch: string | null, owner: string | null): readonly Placed[] => jobs.map((job) => benchStep(job, naming, batch, owner));
  const panelsFirst = (batch: NamedBatch, index: number): readonly Placed[] => {
    const later = batches.slice(index);
    return panels.filter((jobs) => !done.has(jobs) && (holds(ground, batch, jobs) || later.find((each) => holds(ground, each, jobs))?.name === servedBy(batches, index)?.name)).flatMap((jobs) => {
      done.add(jobs);
      const owning = later.find((each) => holds(ground, each, jobs)) ?? batch;
      return [...bench(jobs, owning.name, ownerOf(ground, naming, owning.copies)), ...boxSteps(ground, naming, jobs, owning)];
    });
  };
  const made = batches.flatMap((batch, index) => [...panelsFirst(batch, index), ...lineSteps(ground, batch, batch, naming)]);
  const left = panels.filter((jobs) => !done.has(jobs)).flatMap((jobs) => [...bench(jobs, null, null), ...boxSteps(ground, naming, jobs, null)]);
  return [...bench(tubeJobs(ground), null, null), ...left, ...made, ...bench(plateJobs(ground), null, null), ...lineSteps(ground, whole, null, naming)];
}

/** The batch that is the last to take what this one makes. */
function servedBy(batches: readonly NamedBatch[], index: number): NamedBatch | undefined {
  const own = batches[index];
  if (own === undefined) return undefined;
  return [...batches.slice(index)].reverse().find((batch) => own.copies.some((copy) => batch.copies.some((other) => indicesOf(copy).every((at) => hasBit(other, at))))) ?? own;
}

const holds = (ground: Ground, batch: BatchLine, jobs: readonly BenchJob[]): boolean =>
  batch.copies.some((copy) => partsIn(ground, copy).some((id) => jobs.some(({ parts }) => parts.includes(id))));

function benchStep(job: BenchJob, naming: Naming, batch: string | null, owner: string | null): Placed {
  const draft = benchDraft(job);
  return { building: null, step: { ...draft, key: keyFor(naming, draft, owner, batch !== null), batch, times: job.times } };
}

/** Boxes of a kind, folded when their bench work is done; of a batch the first one stands for all. */
function boxSteps(ground: Ground, naming: Naming, jobs: readonly BenchJob[], batch: NamedBatch | null): readonly Placed[] {
  const [first] = batch?.copies ?? [ground.finished];
  const own = ground.boxes.filter(({ part, unit }) => jobs[0]?.parts.includes(part.id) === true && first !== undefined && hasBit(first, unit));
  const owner = batch === null ? null : ownerOf(ground, naming, batch.copies);
  return own.flatMap((box) => boxDrafts(box).map((draft): Placed =>
    ({ building: null, step: { ...draft, key: keyFor(naming, draft, owner, batch !== null), batch: batch?.name ?? null, times: batch?.times ?? 1 } })));
}

function lineSteps(ground: Ground, line: Line, batch: NamedBatch | null, naming: Naming): readonly Placed[] {
  const owner = batch === null ? null : ownerOf(ground, naming, batch.copies);
  return line.buildings.flatMap((building) => draftsOf(ground, building).map((draft): Placed =>
    ({ building, step: { ...draft, key: keyFor(naming, draft, owner, batch !== null), batch: batch?.name ?? null, times: batch?.times ?? 1 } })));
}

/** Numbers the steps, and keeps count of what is drilled. */
function numbered(steps: readonly Unnumbered[]): readonly FoundStep[] {
  const drilled = new Set<string>();
  return steps.map((step, index): FoundStep => {
    const before = [...drilled];
    step.drillsFor.forEach((pin) => drilled.add(pin));
    return { ...step, number: index + 1, drilled: before };
  });
}
