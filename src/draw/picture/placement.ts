import type { Box } from '../types.ts';
import { boxesOverlap, segmentInBox, segmentsCross, type Segment } from '../kit/geometry.ts';
import type { Mark } from '../kit/marks.ts';
import { labelGap } from './sizes.ts';

/** A way to set one mark: the box of its text, its thin lines, what it costs by itself, and its drawing. */
export interface Place {
  readonly box: Box;
  readonly lines: readonly Segment[];
  readonly cost: number;
  draw(): readonly Mark[];
}

/** The ways one mark can be set, the cheapest first. */
export type Choices = readonly Place[];

/** One way for each mark, in the marks' order, with the sum of all costs. */
export interface Setting {
  readonly places: readonly Place[];
  readonly cost: number;
}

/** A line of one mark under the text of another; two lines that cross. In mm of distance that one would rather accept. */
const costs = { lineUnderText: 200, linesCross: 30 } as const;
const passes = 4;
const mostRestarts = 6;

/**
 * Sets every mark so that no two texts overlap. Greedy from the mark with the fewest choices on; a mark
 * that finds no room moves to the front and all start again; then each mark in turn takes its best way
 * given the others until nothing changes. Null when it cannot be done this way.
 */
export function setMarks(choices: readonly Choices[]): Setting | null {
  if (choices.some((ways) => ways.length === 0)) return null;
  let turns = choices.map((_, i) => i).sort((a, b) => count(choices, a) - count(choices, b) || a - b);
  for (let attempt = 0; attempt <= Math.min(choices.length, mostRestarts); attempt++) {
    const outcome = greedy(choices, turns);
    if (typeof outcome !== 'number') return improved(choices, outcome);
    turns = [outcome, ...turns.filter((turn) => turn !== outcome)];
  }
  return null;
}

const count = (choices: readonly Choices[], i: number): number => choices[i]?.length ?? 0;

/** A place for each mark, or the number of the mark that found none. */
function greedy(choices: readonly Choices[], turns: readonly number[]): Map<number, Place> | number {
  const set = new Map<number, Place>();
  for (const turn of turns) {
    const best = bestOf(choices[turn] ?? [], [...set.values()]);
    if (!best) return turn;
    set.set(turn, best.place);
  }
  return set;
}

function improved(choices: readonly Choices[], set: Map<number, Place>): Setting {
  for (let pass = 0; pass < passes; pass++) {
    let changed = false;
    choices.forEach((ways, i) => {
      const best = bestOf(ways, othersThan(set, i));
      if (!best || best.place === set.get(i)) return;
      set.set(i, best.place);
      changed = true;
    });
    if (!changed) break;
  }
  const places = choices.flatMap((_, i) => set.get(i) ?? []);
  const pairs = places.flatMap((a, i) => places.slice(i + 1).map((b) => pairCost(a, b)));
  return { places, cost: places.reduce((sum, place) => sum + place.cost, 0) + pairs.reduce((sum, cost) => sum + cost, 0) };
}

function othersThan(set: ReadonlyMap<number, Place>, i: number): Place[] {
  return [...set].filter(([turn]) => turn !== i).map(([, place]) => place);
}

function bestOf(ways: Choices, others: readonly Place[]): { readonly place: Place; readonly cost: number } | null {
  let best: { place: Place; cost: number } | null = null;
  for (const place of ways) {
    let cost = place.cost;
    for (const other of others) {
      if (best && cost >= best.cost) break;
      cost += pairCost(place, other);
    }
    if (cost < (best?.cost ?? Infinity)) best = { place, cost };
  }
  return best;
}

function pairCost(a: Place, b: Place): number {
  if (boxesOverlap(a.box, b.box, labelGap)) return Infinity;
  const under = a.lines.filter((s) => segmentInBox(s, b.box)).length + b.lines.filter((s) => segmentInBox(s, a.box)).length;
  const crossings = a.lines.filter((s) => b.lines.some((t) => segmentsCross(s, t))).length;
  return under * costs.lineUnderText + crossings * costs.linesCross;
}
