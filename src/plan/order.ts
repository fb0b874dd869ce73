import { FaultError, type OrderWish } from '../read/index.ts';
import type { Rule } from '../work/facts.ts';
import type { Job } from './jobs.ts';
import { mayLink } from './rules.ts';
import type { OrderReason } from './types.ts';

/** Joins what must hold (needs, geometry), what the designer wishes and what good practice asks. */
export interface Ordering {
  readonly jobs: readonly Job[];
  readonly reasons: readonly OrderReason[];
}

/**
 * Puts the jobs in order. `must` comes from needs and geometry; neither it nor a firm rule can be overridden: a
 * wish that goes against them is refused with the parts in the way. Any other rule gives way to a wish.
 * Ties are broken by the order in which the jobs are given.
 */
export function orderJobs(jobs: readonly Job[], must: readonly OrderReason[], wishes: readonly OrderWish[], rules: readonly Rule[]): Ordering {
  const firm = [...must, ...rules.filter((rule) => rule.firm).flatMap((rule) => linksOf(rule, jobs))];
  const wanted = wishes.map((wish) => acceptedWish(jobs, firm, wish));
  refuseCircle(firm, wanted, wishes);
  const asked = rules.filter((rule) => !rule.firm).flatMap((rule) => linksOf(rule, jobs));
  const reasons = asked.reduce<readonly OrderReason[]>(
    (held, link) => (leads(held, link.then, link.first) ? held : [...held, link]),
    [...firm, ...wanted],
  );
  return { jobs: sorted(jobs, reasons), reasons };
}

const linksOf = (rule: Rule, jobs: readonly Job[]): OrderReason[] =>
  jobs.filter(rule.first).flatMap((first) => jobs.filter((job) => rule.then(job) && mayLink(rule, first, job))
    .map((then) => ({ first: first.key, then: then.key, rule: rule.name, parts: [] })));

function acceptedWish(jobs: readonly Job[], must: readonly OrderReason[], wish: OrderWish): OrderReason {
  for (const [field, key] of [['first', wish.first], ['then', wish.then]] as const) {
    if (!jobs.some((job) => job.key === key)) {
      throw fault(wish, `order.${field}`, `"${key}"`, `the key of a step, one of ${jobs.map((job) => job.key).join(', ')}`);
    }
  }
  const against = pathOf(must, wish.then, wish.first);
  if (against !== null) {
    throw fault(wish, 'order', `"${wish.first}" before "${wish.then}"`, `leave this out: ${against.map(explained).join('; ')}`);
  }
  return { first: wish.first, then: wish.then, rule: 'designer', parts: [] };
}

function refuseCircle(must: readonly OrderReason[], wanted: readonly OrderReason[], wishes: readonly OrderWish[]): void {
  wanted.forEach((link, index) => {
    const against = pathOf([...must, ...wanted.slice(0, index)], link.then, link.first);
    const wish = wishes[index];
    if (against === null || wish === undefined) return;
    throw fault(wish, 'order',
      `"${link.first}" before "${link.then}"`, `leave this out: ${against.map(explained).join('; ')}`);
  });
}

const fault = (wish: OrderWish, field: string, found: string, remedy: string): FaultError =>
  new FaultError([{ position: wish.position, field, found, remedy }]);

/** One link of an order as a plain sentence. */
export function explained(link: OrderReason): string {
  const because = link.parts.length > 0 ? `, or ${link.parts.join(', ')} would be in the way` : ` (${link.rule})`;
  return `"${link.first}" comes before "${link.then}"${because}`;
}

const leads = (links: readonly OrderReason[], from: string, to: string): boolean => pathOf(links, from, to) !== null;

/** The links that lead from one job to another, or null. */
export function pathOf(links: readonly OrderReason[], from: string, to: string): readonly OrderReason[] | null {
  const cameBy = new Map<string, OrderReason | null>([[from, null]]);
  const waiting = [from];
  for (let key = waiting.shift(); key !== undefined; key = waiting.shift()) {
    if (key === to) return traced(cameBy, to);
    for (const link of links) {
      if (link.first === key && !cameBy.has(link.then)) {
        cameBy.set(link.then, link);
        waiting.push(link.then);
      }
    }
  }
  return null;
}

function traced(cameBy: ReadonlyMap<string, OrderReason | null>, to: string): readonly OrderReason[] {
  const link = cameBy.get(to) ?? null;
  return link === null ? [] : [...traced(cameBy, link.first), link];
}

/** Takes, again and again, the first job in the list that waits for nothing. */
function sorted(jobs: readonly Job[], reasons: readonly OrderReason[]): readonly Job[] {
  const left = [...jobs];
  const done: Job[] = [];
  while (left.length > 0) {
    const waits = (job: Job): boolean => reasons.some((link) => link.then === job.key && left.some((other) => other.key === link.first));
    const next = left.findIndex((job) => !waits(job));
    if (next < 0) throw new RangeError(`no order leaves every motion free: ${circleIn(left, reasons).map(explained).join('; ')}`);
    done.push(...left.splice(next, 1));
  }
  return done;
}

/** The links that run in a circle among jobs that all wait for one another. */
function circleIn(left: readonly Job[], reasons: readonly OrderReason[]): readonly OrderReason[] {
  const among = reasons.filter((link) => left.some((job) => job.key === link.first) && left.some((job) => job.key === link.then));
  const closing = among.find((link) => leads(among, link.then, link.first));
  return closing === undefined ? [] : [closing, ...(pathOf(among, closing.then, closing.first) ?? [])];
}
