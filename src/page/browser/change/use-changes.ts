import { useReducer } from 'react';
import type { Item, Quantity } from '../../../read/index.ts';
import { savedValue, type Draft } from './values.ts';

/** A size of an item, by the path of its file. */
export interface Place {
  readonly path: string;
  readonly size: string;
}

/** Values that were changed in one go, as they were and as they are. */
export interface Change extends Place {
  readonly before: Draft;
  readonly after: Draft;
  /** Changes of one stroke (a slider's way, a figure typed) are undone together. */
  readonly stroke: number;
}

/** What the reader wants of each size, and how it came there. Nothing of it is forgotten when a file is saved. */
export interface Changes {
  readonly wanted: Readonly<Record<string, Draft>>;
  /** Oldest first. */
  readonly past: readonly Change[];
  /** Undone, the next to be done again last. */
  readonly undone: readonly Change[];
}

export type ChangeOrder =
  | { readonly order: 'change'; readonly change: Change }
  | { readonly order: 'undo' }
  | { readonly order: 'redo' }
  /** Forgets all: the files are read again without the changes. */
  | { readonly order: 'forget' };

const NOTHING: Changes = { wanted: {}, past: [], undone: [] };

export const keyOf = ({ path, size }: Place): string => `${path} ${size}`;

export const useChanges = (): readonly [Changes, (order: ChangeOrder) => void] => useReducer(changed, NOTHING);

/** The changes after an order. */
export function changed(changes: Changes, order: ChangeOrder): Changes {
  const { past, undone } = changes;
  switch (order.order) {
    case 'change': return { wanted: withValues(changes, order.change, order.change.after), past: joined(past, order.change), undone: [] };
    case 'undo': {
      const last = past.at(-1);
      return last === undefined ? changes : { wanted: withValues(changes, last, last.before), past: past.slice(0, -1), undone: [...undone, last] };
    }
    case 'redo': {
      const next = undone.at(-1);
      return next === undefined ? changes : { wanted: withValues(changes, next, next.after), past: [...past, next], undone: undone.slice(0, -1) };
    }
    case 'forget': return NOTHING;
  }
}

const withValues = ({ wanted }: Changes, place: Place, values: Draft): Changes['wanted'] =>
  ({ ...wanted, [keyOf(place)]: { ...wanted[keyOf(place)], ...values } });

function joined(past: readonly Change[], change: Change): readonly Change[] {
  const last = past.at(-1);
  if (last === undefined || last.stroke !== change.stroke || keyOf(last) !== keyOf(change)) return [...past, change];
  return [...past.slice(0, -1), { ...last, before: { ...change.before, ...last.before }, after: { ...last.after, ...change.after } }];
}

/** What of the wanted values the file does not have. Values of parameters that are no longer there are left out. */
export function draftOf({ wanted }: Changes, item: Item, place: Place): Draft {
  const known = new Set(item.parameters.map(({ name }) => name));
  return Object.fromEntries(Object.entries(wanted[keyOf(place)] ?? {})
    .filter(([name, { value }]: readonly [string, Quantity]) => known.has(name) && value !== savedValue(item, place.size, name).value));
}
