import { endsOfTube, placed, tubeSection } from '../../model/index.ts';
import { middleLoadMoment } from '../formulas/beam.ts';
import { judge } from '../judge.ts';
import { distance, isBed } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import { pinnedPlates } from '../stand/stand-input.ts';
import type { Check } from '../types.ts';

/**
 * Bending stress of a guard's upper tube, N/mm²: somebody leans on its middle, and the panel is not counted on; or of
 * the posts that hold it. The worst guard counts.
 */
export const guardPush: Check = ({ model, limits, stance }) => {
  if (!isBed(model)) return [];
  const { tube, jointPin, joint } = model.kit;
  const { factor } = rulesOf({ model, limits });
  const modulus = tubeSection(model.kit).drilledModulus(jointPin.diameter);
  const upper = pinnedPlates(model).flatMap(({ tubes }) => tubes.map((each) => each.tube).toSorted((a, b) => placed(b.pose, [0, 0, 0])[2] - placed(a.pose, [0, 0, 0])[2]).slice(0, 1));
  const judged = upper.flatMap((part) => {
    const ends = endsOfTube(part);
    const reach = ends ? distance(...ends) + 2 * joint.stop : 0;
    const moment = Math.max(middleLoadMoment(limits.guardPush.value, reach, 0), (stance.guardMoment ?? 0) * limits.guardPush.value);
    return [judge({
      name: 'guard-push', figure: moment / modulus, limit: (tube.bendingStrength * tube.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
      source: `P L / 4 W of the drilled tube, the posts by the frame solved in space (C); ${limits.guardPush.source}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
      parts: [part.id],
    })];
  });
  return judged.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
};
