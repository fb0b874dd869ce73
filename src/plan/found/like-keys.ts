import type { Building } from './line.ts';

/** A step by the name that it shares with steps alike, and what it does. */
interface Named {
  readonly step: { readonly key: string };
  readonly building: Building | null;
}

/** Tells steps of like keys apart by a number, in their order. */
export function toldApart<Each extends Named>(placed: readonly Each[]): readonly Each[] {
  const counts = new Map<string, number>();
  return placed.map((each) => {
    const count = (counts.get(each.step.key) ?? 0) + 1;
    counts.set(each.step.key, count);
    return withKey(each, numbered(each.step.key, count));
  });
}

/**
 * The same for an order that was found anew: a step is called as the one that closed the same connections before, so
 * that a name means the same work whatever is wished. Both lists have the keys that steps alike share.
 */
export function calledAsBefore<Each extends Named>(placed: readonly Each[], before: readonly Each[]): readonly Each[] {
  const names = toldApart(before).map(({ step }) => step.key);
  const pairs = placed.flatMap((now, index) => before.flatMap((then, at) => (now.step.key === then.step.key ? [{ index, at, alike: likeness(now, then) }] : [])))
    .sort((one, other) => other.alike - one.alike || one.index - other.index || one.at - other.at);
  const keys = new Map<number, string>();
  const taken = new Set<string>();
  for (const { index, at, alike } of pairs) {
    const name = names[at] ?? '';
    if (alike === 0 || keys.has(index) || taken.has(name)) continue;
    keys.set(index, name);
    taken.add(name);
  }
  return placed.map((each, index) => {
    const key = keys.get(index) ?? firstFree(each.step.key, taken);
    taken.add(key);
    return withKey(each, key);
  });
}

const numbered = (key: string, count: number): string => (count === 1 ? key : `${key}-${count}`);

function firstFree(key: string, taken: ReadonlySet<string>): string {
  let count = 1;
  while (taken.has(numbered(key, count))) count += 1;
  return numbered(key, count);
}

const withKey = <Each extends Named>(each: Each, key: string): Each => ({ ...each, step: { ...each.step, key } });

/** How much of the work of two steps is the same: connections that both close, turns of the same, work on the bench. */
function likeness({ building: now }: Named, { building: then }: Named): number {
  if (now === null || then === null) return now === then ? 1 : 0;
  if (now.is === 'turn' || then.is === 'turn') return now.is === then.is ? 1 + (now.up === then.up ? 1 : 0) : 0;
  const closed = new Set(now.cut.undoes);
  return then.cut.undoes.filter((link) => closed.has(link)).length;
}
