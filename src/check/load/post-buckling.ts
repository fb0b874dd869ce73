import { eulerLoad } from '../formulas/column.ts';
import { judge } from '../judge.ts';
import { deckLevels, tubeLevels } from '../levels.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Check } from '../types.ts';
import { deckWeight, emptyWeight } from '../weights.ts';
import { baysOf } from './bays.ts';
import { tubeModulus, tubeSecond } from './deck.ts';

/** A free length of the posts, mm, and Euler's factor K for its ends. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly lengthFactor: number;
}

/**
 * Load of the most laden post, N, against Euler's load π² E I / (K L)² / factor of safety, in the stretch
 * with the least margin. Between levels that cables or flat panels hold K = 1; the leg under them, and anything over
 * them up to the top deck, K = 2.
 */
export const postBuckling: Check = (given) => {
  const { factor } = rulesOf(given);
  const stretches = stretchesOf(given).map((stretch) => ({
    figure: postLoad(given, stretch.from),
    limit: eulerLoad(tubeModulus(given), tubeSecond(given), stretch.to - stretch.from, stretch.lengthFactor) / factor.value,
  }));
  const [worst] = stretches.toSorted((a, b) => a.limit / a.figure - b.limit / b.figure);
  if (!worst) return [];
  return [judge({
    name: 'post-buckling', ...worst, bound: 'most', unit: 'N',
    source: `π² E I / (K L)² (C) / ${factor.value}, ${factor.source}; ${given.limits.cornerShare.source}`,
    parts: idsOf(given.model, 'post'),
  })];
};

function stretchesOf({ model }: Case): readonly Stretch[] {
  const top = Math.max(...deckLevels(model));
  const held = [...new Set(baysOf(model).flatMap((bay) => [bay.low, bay.high]))].toSorted((a, b) => a - b);
  const [lowest = Math.max(...tubeLevels(model))] = held;
  const highest = held.at(-1) ?? top;
  return [
    { from: 0, to: lowest, lengthFactor: 2 },
    ...held.slice(1).map((to, index) => ({ from: held[index] ?? 0, to, lengthFactor: 1 })),
    ...(highest < top - 1 ? [{ from: highest, to: top, lengthFactor: 2 }] : []),
  ].filter(({ from, to }) => to > from);
}

/** All decks over a height, laden, and the posts' and cables' own weight, on the corner that bears most. */
function postLoad(given: Case, height: number): number {
  const { model, limits } = given;
  const above = deckLevels(model).filter((level) => level > height + 1).length;
  const rest = emptyWeight(given) - deckWeight(given) * model.deckTops.length;
  return (above * (given.load + deckWeight(given)) + rest) * limits.cornerShare.value;
}
