import { tubeSection } from '../../model/index.ts';
import { lineLoadMoment, middleLoadMoment } from '../formulas/beam.ts';
import { judge } from '../judge.ts';
import { rulesOf, testShare, testSource } from '../rules.ts';
import type { Check } from '../types.ts';
import { deckWeight } from '../weights.ts';
import { bearersOf } from './bearers.ts';
import { deckOf } from './deck.ts';
import { standingsOf } from './standings.ts';

/**
 * Bending stress of the deck's tube that bends most, N/mm²: M / W, M = P (L / 4 − c / 8) from the load down where it
 * stands worst, and the panel's pull sideways together (simply supported).
 */
export const tubeBending: Check = (given) => {
  const { kit: { tube } } = given.model;
  const deck = deckOf(given);
  const rules = rulesOf(given);
  const { factor, pad } = rules;
  const modulus = tubeSection(given.model.kit).sectionModulus;
  const stresses = standingsOf(given).map(({ share, span, stretch, tubes, stands }) => {
    const down = middleLoadMoment(share * given.load, span, stretch) + lineLoadMoment(deckWeight(given) / 2 / span, span);
    const sideways = lineLoadMoment((tubes === deck.bearers ? deck.tubePull : 0) / span, span);
    return { figure: Math.hypot(down, sideways) / modulus, tubes, stands };
  });
  const worst = stresses.reduce((most, each) => (each.figure > most.figure ? each : most));
  return [judge({
    name: 'tube-bending', figure: worst.figure, limit: (tube.bendingStrength * tube.usedStockFactor) / factor.value,
    bound: 'most', unit: 'N/mm²',
    source: `P (L / 4 − c / 8) / W (C), load ${worst.stands}; ${pad.source}${testSource(rules, testShare(given))}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
    parts: bearersOf(given.model, worst.tubes),
  })];
};
