import type { Drift } from '../frame/index.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Check, Finding } from '../types.ts';
import { pushSource, sideForce } from './push.ts';

const SOLVED = 'frame in space by the direct stiffness method (C)';

/** Drift of the top level under the push, mm, in the weaker direction. A mechanism has none: `bracing` fails for it. */
export const sway: Check = (given) => {
  const { model, stance } = given;
  if (stance.braced === null) return [];
  const holding = [...idsOf(model, 'cable'), ...idsOf(model, 'flat-panel')];
  return [drift(given, 'sway', furthest(stance.braced.drift) * sideForce(given), `tubes pinned, one taut cable a face; ${SOLVED}`, holding)];
};

/**
 * The same with the cables left out, mm: joints lean until their play is used up, then grip stiffly. Lean: the play of
 * the bore over the sleeve's length and, taken for the same, over the socket's depth. A caution: the cables must stay tight.
 */
export const swayWithoutCables: Check = (given) => {
  const { model: { kit: { joint, tube } }, stance } = given;
  if (stance.gripped === null) return [];
  const play = joint.bore - tube.outsideDiameter;
  const lean = play / (joint.sleeveAbove + joint.sleeveBelow) + play / joint.socketDepth;
  const figure = lean * stance.height + furthest(stance.gripped.drift) * sideForce(given);
  return [drift(given, 'sway-without-cables', figure, `play of the joints, then stiff joints; ${SOLVED}`, idsOf(given.model, 'joint'))];
};

const furthest = ({ x, y }: Drift): number => Math.max(x, y);

function drift(given: Case, name: 'sway' | 'sway-without-cables', figure: number, how: string, parts: readonly string[]): Finding {
  const { driftRatio } = given.limits;
  return judge({
    name, figure, limit: given.stance.height / driftRatio.value, bound: 'most', unit: 'mm',
    source: `${how}; ${pushSource(given)}; ${driftRatio.source}`, parts, otherwise: name === 'sway' ? 'fail' : 'caution',
  });
}

/** Pull in the hardest worked cable under the push, N. */
export const cablePull: Check = (given) => {
  const pulls = given.stance.braced?.cablePulls ?? [];
  if (pulls.length === 0) return [];
  const hardest = Math.max(...pulls);
  const { factor } = rulesOf(given);
  return [judge({
    name: 'cable-pull', figure: hardest * sideForce(given), limit: given.model.kit.cable.strength / factor.value,
    bound: 'most', unit: 'N',
    source: `${SOLVED}; ${pushSource(given)}; strength of the kit / ${factor.value}, ${factor.source}`,
    parts: idsOf(given.model, 'cable').filter((_, index) => (pulls[index] ?? 0) > 0.999 * hardest),
  })];
};
