import { lineLoadDeflection } from '../formulas/beam.ts';
import { judge } from '../judge.ts';
import { rulesOf } from '../rules.ts';
import type { Check } from '../types.ts';
import { bearersOf } from './bearers.ts';
import { deckOf, tubeModulus, tubeSecond } from './deck.ts';

/** Deflection of a bearing tube, mm: 5 w L⁴ / 384 E I (simply supported, even load), E with the used-stock factor. */
export const tubeDeflection: Check = (given) => {
  const deck = deckOf(given);
  const { tubeRatio } = rulesOf(given);
  return [judge({
    name: 'tube-deflection',
    figure: lineLoadDeflection(deck.tubeLoad / deck.tubeSpan, deck.tubeSpan, tubeModulus(given), tubeSecond(given)),
    limit: deck.tubeSpan / tubeRatio.value, bound: 'most', unit: 'mm',
    source: `5 w L⁴ / 384 E I (C); ${tubeRatio.source}`,
    parts: bearersOf(given.model, deck.bearers),
  })];
};
