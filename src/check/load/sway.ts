import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Check } from '../types.ts';
import { emptyWeight, loadedWeight } from '../weights.ts';
import { hardPush, hardPushSource, pushSource, sideForce } from './push.ts';

const SOLVED = 'frame in space by the direct stiffness method (C)';

/**
 * Drift of the top level under the push and the loads, each on one half of its deck, mm, in the weaker direction, and what
 * the weight adds once it leans: the drift over 1 − θ, θ = W drift / (push × height) (P-Δ, the stability coefficient of any
 * code for frames, (C)). All decks laden or the top one alone, the worse. A mechanism has none: `bracing` fails for it.
 */
export const sway: Check = (given) => {
  const { model, stance, limits: { driftRatio } } = given;
  if (stance.braced === null) return [];
  const { drift, lean } = stance.braced;
  const cases = [
    { stands: 'all at once', shift: lean.all, weight: loadedWeight(given) },
    { stands: 'the top alone', shift: lean.top, weight: emptyWeight(given) + given.load },
  ].flatMap(({ stands, shift, weight }) => (['x', 'y'] as const).map((along) => {
    const push = sideForce(given.limits, weight);
    const first = drift[along] * push + shift[along] * given.load;
    const share = (weight * first) / (push * stance.height);
    return { stands, along, figure: share < 1 ? first / (1 - share) : stance.height };
  }));
  const worst = cases.reduce((most, each) => (each.figure > most.figure ? each : most));
  return [judge({
    name: 'sway', figure: worst.figure, limit: stance.height / driftRatio.value, bound: 'most', unit: 'mm',
    source: `${worst.along === 'x' ? 'sideways' : 'front to back'}, the weaker way; load on ${worst.stands}, on the half it leans to; tubes pinned, one taut cable a face, weight leaning with it; ${SOLVED}; ${pushSource(given)}; ${driftRatio.source}`,
    parts: [...idsOf(model, 'cable'), ...idsOf(model, 'flat-panel')],
  })];
};

/** Pull in the hardest worked cable under the push, N. */
export const cablePull: Check = (given) => {
  const pulls = given.stance.braced?.cablePulls ?? [];
  if (pulls.length === 0) return [];
  const hardest = Math.max(...pulls);
  const { factor } = rulesOf(given);
  const { knot } = given.limits;
  return [judge({
    name: 'cable-pull', figure: hardest * hardPush(given), limit: (knot.value * given.model.kit.cable.strength) / factor.value,
    bound: 'most', unit: 'N',
    source: `${SOLVED}; ${hardPushSource(given)}; strength of the kit / ${factor.value}, ${factor.source}; ${knot.source}`,
    parts: idsOf(given.model, 'cable').filter((_, index) => (pulls[index] ?? 0) > 0.999 * hardest),
  })];
};
