import { eulerLoad } from '../formulas/column.ts';
import { judge } from '../judge.ts';
import { deckLevels, tubeLevels } from '../levels.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Check } from '../types.ts';
import { deckWeight, emptyWeight } from '../weights.ts';
import { baysOf } from './bays.ts';
import { tubeModulus, tubeSecond } from './deck.ts';
import { cornerShare, sharedByPosts } from './standings.ts';

/** A free length of the posts, mm, Euler's factor K for its ends, and how much of a deck's load counts there on one post. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly lengthFactor: number;
  readonly share: number;
}

/**
 * Load of a post, N, against Euler's load π² E I / (K L)² / factor of safety, in the stretch with the least margin. Between
 * levels that cables or flat panels hold K = 1, in the leg under them, and in anything over them up to the top deck, K = 2:
 * there the posts, which decks tie, give way together. Between one level and the next K = 1: there one gives way alone, with
 * every load in one place at its corner.
 */
export const postBuckling: Check = (given) => {
  const { factor } = rulesOf(given);
  const stretches = [...together(given), ...alone(given)].map((stretch) => ({
    figure: postLoad(given, stretch),
    limit: eulerLoad(tubeModulus(given), tubeSecond(given), stretch.to - stretch.from, stretch.lengthFactor) / factor.value,
  }));
  const [worst] = stretches.toSorted((a, b) => a.limit / a.figure - b.limit / b.figure);
  if (!worst) return [];
  return [judge({
    name: 'post-buckling', ...worst, bound: 'most', unit: 'N',
    source: `π² E I / (K L)² (C) / ${factor.value}, ${factor.source}; ${given.limits.cornerShare.source}, or every load in one place at one corner: ${rulesOf(given).pad.source}`,
    parts: idsOf(given.model, 'post'),
  })];
};

function together(given: Case): readonly Stretch[] {
  const { model } = given;
  const share = sharedByPosts(given);
  const top = Math.max(...deckLevels(model));
  const held = [...new Set(baysOf(model).flatMap((bay) => [bay.low, bay.high]))].toSorted((a, b) => a - b);
  const [lowest = Math.max(...tubeLevels(model))] = held;
  const highest = held.at(-1) ?? top;
  return [
    { from: 0, to: lowest, lengthFactor: 2, share },
    ...held.slice(1).map((to, index) => ({ from: held[index] ?? 0, to, lengthFactor: 1, share })),
    ...(highest < top - 1 ? [{ from: highest, to: top, lengthFactor: 2, share }] : []),
  ].filter(({ from, to }) => to > from);
}

function alone(given: Case): readonly Stretch[] {
  const levels = tubeLevels(given.model);
  return levels.map((to, index): Stretch => ({ from: levels[index - 1] ?? 0, to, lengthFactor: 1, share: cornerShare(given) }));
}

/** All laden decks over a stretch's lower end, and the posts' and cables' own weight, as far as they count on one post. */
function postLoad(given: Case, { from: height, share }: Stretch): number {
  const { model, limits } = given;
  const above = deckLevels(model).filter((level) => level > height + 1).length;
  const rest = emptyWeight(given) - deckWeight(given) * model.deckTops.length;
  return above * given.load * share + (above * deckWeight(given) + rest) * limits.cornerShare.value;
}
