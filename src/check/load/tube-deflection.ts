import { middleLoadDeflection, lineLoadDeflection } from '../formulas/beam.ts';
import { judge } from '../judge.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Check } from '../types.ts';
import { deckWeight } from '../weights.ts';
import { bearersOf } from './bearers.ts';
import { tubeModulus, tubeSecond } from './deck.ts';
import { standingsOf, type Standing } from './standings.ts';

/** Deflection of the tube that sags most, mm, its span and where the load stands; the deck's own weight is even. */
export function tubeSag(given: Case): Pick<Standing, 'span' | 'tubes' | 'stands'> & { readonly figure: number } {
  const [modulus, second] = [tubeModulus(given), tubeSecond(given)];
  const sags = standingsOf(given).filter((standing) => standing.sags).map(({ share, stretch, span, tubes, stands }) => ({
    span, tubes, stands,
    figure: middleLoadDeflection(share * given.load, span, stretch, modulus, second)
      + lineLoadDeflection(deckWeight(given) / 2 / span, span, modulus, second),
  }));
  return sags.reduce((worst, each) => (each.figure > worst.figure ? each : worst));
}

/** Deflection of a bearing tube, mm: 5 w L⁴ / 384 E I (simply supported), E with the used-stock factor, the load on one half of the deck. */
export const tubeDeflection: Check = (given) => {
  const { figure, span, tubes, stands } = tubeSag(given);
  const { tubeRatio } = rulesOf(given);
  return [judge({
    name: 'tube-deflection', figure, limit: span / tubeRatio.value, bound: 'most', unit: 'mm',
    source: `5 w L⁴ / 384 E I (C), load ${stands}; ${given.limits.oneSided.source}; ${tubeRatio.source}`,
    parts: bearersOf(given.model, tubes),
  })];
};
