import { tubeSection } from '../../model/index.ts';
import { middleLoadMoment } from '../formulas/beam.ts';
import { faceStress } from '../formulas/sandwich.ts';
import { judge } from '../judge.ts';
import { distance } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import { backrestsOf } from '../stand/backrest.ts';
import type { Case, Check } from '../types.ts';

/** The push of a back on a backrest, N: a share of the seat's load. */
export const backrestPush = ({ limits, load }: Pick<Case, 'limits' | 'load'>): number => limits.backrestShare.value * load;

/**
 * Bending stress of a backrest's tube, N/mm²: half the push, even over the panel's width in the middle of the tube,
 * hinged at the posts, on the drilled section.
 */
export const backrestTube: Check = (given) => {
  const { kit: { tube, jointPin } } = given.model;
  const { factor } = rulesOf(given);
  const modulus = tubeSection(given.model.kit).drilledModulus(jointPin.diameter);
  return backrestsOf(given.model).map(({ tubes, tubeIds, width }) => {
    const [reach, stop] = [Math.max(...tubes.map(({ ends }) => distance(...ends))), given.model.kit.joint.stop];
    return judge({
      name: 'backrest-tube', figure: middleLoadMoment(backrestPush(given) / 2, reach + 2 * stop, width) / modulus,
      limit: (tube.bendingStrength * tube.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
      source: `P (L / 4 − c / 8) / W of the drilled tube (C); ${given.limits.backrestShare.source}; ${given.limits.seatTest.source}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
      parts: tubeIds,
    });
  });
};

/** Stress in the skins of a backrest's panel, N/mm²: a strip from tube to tube under the whole push. */
export const backrestPanel: Check = (given) => {
  const { panel } = given.model.kit;
  const { factor } = rulesOf(given);
  return backrestsOf(given.model).map(({ plateId, width, tubes }) => {
    const heights = tubes.map(({ height }) => height);
    const strip = {
      span: Math.max(...heights) - Math.min(...heights), width, skin: panel.skin, faceDistance: panel.thickness - panel.skin,
      skinModulus: panel.skinModulus * panel.usedStockFactor, coreShearModulus: panel.coreShearModulus * panel.usedStockFactor,
    };
    return judge({
      name: 'backrest-panel', figure: faceStress(backrestPush(given), strip),
      limit: (panel.skinStrength * panel.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
      source: `thin-face sandwich strip (C); ${given.limits.backrestShare.source}; ${given.limits.seatTest.source}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
      parts: [plateId],
    });
  });
};
