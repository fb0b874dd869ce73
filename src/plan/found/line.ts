import type { Vec3 } from '../../model/index.ts';
import { hasBit, type Bits } from './bits.ts';
import { copiesOf } from './alike.ts';
import { fixedCosts, handlingCosts, handsFor, poseCosts, turnCosts, type Cost, type Hands } from './costs.ts';
import type { Cut } from './cuts.ts';
import { isRaw } from './ground.ts';
import { NoOrder } from '../no-order.ts';
import { formAt, restAt, solve, type Search } from './search.ts';

/** One piece of building, seen forwards. */
export type Building =
  | { readonly is: 'cut'; readonly cut: Cut; readonly set: Bits; readonly up: number; readonly fresh: readonly Bits[]; readonly hands: Hands; readonly costs: readonly Cost[] }
  | { readonly is: 'turn'; readonly set: Bits; readonly from: number; readonly up: number; readonly costs: readonly Cost[] };

/** A sub-assembly or the whole item, with what is done to build it and the sub-assemblies that it takes. */
export interface Line {
  readonly set: Bits;
  readonly buildings: readonly Building[];
}

/** How the finished item is built, ending with this direction up. Throws when it comes apart in no way. */
export function wholeLine(search: Search, up: number): Line {
  const { finished } = search.ground;
  const { best } = solve(search, finished, 1);
  if (!Number.isFinite(best[up] ?? Infinity)) throw new NoOrder('it comes apart, but cannot be turned upright as it is put together: something would come off', 'fewer parts that are loose while it lies');
  return { set: finished, buildings: built(search, finished, 1, up) };
}

/** How one of a batch is built, in the pose that is the cheapest for it. */
export function lineOf(search: Search, set: Bits): Line {
  const copies = copiesOf(search.ground, set);
  const { builtIn } = solve(search, set, copies);
  return { set, buildings: built(search, set, copies, builtIn.indexOf(Math.min(...builtIn))) };
}

function built(search: Search, set: Bits, copies: number, up: number): readonly Building[] {
  const known = solve(search, set, copies);
  const from = known.from[up] ?? up;
  const choice = known.choices[from] ?? null;
  if (choice === null) return [];
  const { cut, onward } = choice;
  return [
    ...(onward === null ? [] : built(search, onward, copies, from)),
    cutBuilding(search, cut, set, from, onward),
    ...(from === up ? [] : [turnBuilding(search, set, from, up)]),
  ];
}

function cutBuilding(search: Search, cut: Cut, set: Bits, up: number, onward: Bits | null): Building {
  const { ground } = search;
  const rest = restAt(search, cut.restBits, up, set);
  const fresh = [...cut.rest.filter((piece) => piece !== onward), ...[...cut.leaving].reverse().map((leaving) => leaving.set)].filter((piece) => !isRaw(ground, piece));
  return {
    is: 'cut', cut, set, up, fresh, hands: handsFor(ground, cut, rest),
    costs: [...fixedCosts(ground, cut), ...poseCosts(ground, cut, up, rest), ...fresh.flatMap((piece) => handlingCosts(ground, piece))],
  };
}

function turnBuilding(search: Search, set: Bits, from: number, up: number): Building {
  const at = (pose: number): Vec3 => search.ups[pose] ?? [0, 0, 1];
  const rest = (pose: number) => restAt(search, set, pose, set);
  return { is: 'turn', set, from, up, costs: turnCosts(search.ground, set, at(from), at(up), rest(from), rest(up)) ?? [] };
}

/** A batch: the line of the one that stands for all, and every one that is built. */
export interface BatchLine extends Line {
  readonly form: string;
  readonly copies: readonly Bits[];
}

/** The batches that a line takes, in the order in which they are needed, each after those that it takes itself. */
export function batchesOf(search: Search, whole: Line): readonly BatchLine[] {
  const lines = new Map<string, BatchLine>();
  const visit = (line: Line): void => {
    for (const set of panelsFirst(search, freshIn(line))) {
      const form = formAt(search, set);
      const known = lines.get(form);
      if (known !== undefined) {
        lines.set(form, { ...known, copies: [...known.copies, set] });
        continue;
      }
      const own = lineOf(search, set);
      visit(own);
      lines.set(form, { ...own, form, copies: [set] });
    }
  };
  visit(whole);
  return [...lines.values()];
}

/** What is made of a wrapped panel comes first: the bench is free for marking. */
function panelsFirst({ ground }: Search, sets: readonly Bits[]): readonly Bits[] {
  const hasPanel = (set: Bits): boolean => ground.flaps.some(({ panel }) => hasBit(set, panel));
  return [...sets.filter(hasPanel), ...sets.filter((set) => !hasPanel(set))];
}

export const freshIn = (line: Line): readonly Bits[] => line.buildings.flatMap((building) => (building.is === 'cut' ? building.fresh : []));

/** How often each batch is built in all: as often as those that take it. */
export function timesOf(search: Search, whole: Line, batches: readonly BatchLine[]): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  const count = (line: Line, each: number): void => {
    for (const set of freshIn(line)) {
      const form = formAt(search, set);
      times.set(form, (times.get(form) ?? 0) + each);
    }
  };
  count(whole, 1);
  for (const batch of [...batches].reverse()) count(batch, times.get(batch.form) ?? 1);
  return times;
}
