import { lineLoadMoment } from '../formulas/beam.ts';
import { sectionModulus } from '../formulas/tube-section.ts';
import { judge } from '../judge.ts';
import { rulesOf } from '../rules.ts';
import type { Check } from '../types.ts';
import { bearersOf } from './bearers.ts';
import { deckOf } from './deck.ts';

/**
 * Bending stress of a bearing tube, N/mm²: M / W, M = w L² / 8 from the load down and the panel's pull
 * sideways together (simply supported, even load).
 */
export const tubeBending: Check = (given) => {
  const { kit: { tube } } = given.model;
  const deck = deckOf(given);
  const { factor } = rulesOf(given);
  const lineLoad = Math.hypot(deck.tubeLoad, deck.tubePull) / deck.tubeSpan;
  const modulus = sectionModulus(tube.outsideDiameter, tube.outsideDiameter - 2 * tube.wall);
  return [judge({
    name: 'tube-bending', figure: lineLoadMoment(lineLoad, deck.tubeSpan) / modulus,
    limit: (tube.bendingStrength * tube.usedStockFactor) / factor.value,
    bound: 'most', unit: 'N/mm²',
    source: `w L² / 8 W (C); strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
    parts: bearersOf(given.model, deck.bearers),
  })];
};
