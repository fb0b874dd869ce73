import type { FlatPattern, Side } from '../model/index.ts';
import { ACTIONS, WORK, type Rule } from '../work/facts.ts';
import type { Job } from './jobs.ts';

/** The rules of all work; sides in the order they are wrapped. Common practice, no source, but for what geometry proves as well. */
export function rulesFor(pattern: FlatPattern, sides: readonly Side[] = sidesInOrder(pattern)): readonly Rule[] {
  return ACTIONS.flatMap((action) => WORK[action].rules?.(sides) ?? []);
}

/** Whether a link of a rule may join two jobs: same run, and the same flat panel where the rule is one panel's. */
export function mayLink(held: Rule, first: Job, then: Job): boolean {
  if (first.key === then.key || (held.within !== 'item' && first.run !== then.run)) return false;
  return held.within !== 'plate' || plateOf(first) === plateOf(then);
}

const plateOf = ({ detail }: Job): string | null => (detail.on === 'plate' ? detail.plate : null);

/**
 * Sides in the order they are wrapped: from the shortest to the longest, each pair of opposite sides together,
 * unless the designer wishes `wrap-side` of one before another.
 */
export function sidesInOrder(pattern: FlatPattern, wishes: readonly { readonly first: string; readonly then: string }[] = []): readonly Side[] {
  const usual = [...pattern.flaps].sort((a, b) => (a.to - a.from) - (b.to - b.from)).map((flap) => flap.side);
  const waits = (side: Side, left: readonly Side[]): boolean =>
    wishes.some(({ first, then }) => then === `wrap-side:${side}` && left.some((other) => first === `wrap-side:${other}`));
  const pairs = [usual.slice(0, 2), usual.slice(2)];
  const waitsForOthers = (pair: readonly Side[]): boolean => pair.some((side) => waits(side, usual.filter((other) => !pair.includes(other))));
  const [one = [], other = []] = waitsForOthers(pairs[0] ?? []) && !waitsForOthers(pairs[1] ?? []) ? [...pairs].reverse() : pairs;
  return [one, other].flatMap((pair) => (waits(pair[0] ?? 'left', pair) ? [...pair].reverse() : pair));
}
