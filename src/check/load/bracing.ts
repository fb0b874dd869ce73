import type { Model } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';
import { baysOf, type Bay } from './bays.ts';

/**
 * Least number of faces with crossed cables in any bay from the lowest to the top deck. Three upright faces
 * hold a stiff deck against shift and turn in plan; two leave it free to turn (statics).
 */
export const bracing: Check = ({ model, limits }) => {
  const bays = baysOf(model);
  const cables = idsOf(model, 'cable');
  return [judge({
    name: 'bracing', figure: joinsAllDecks(model, bays) ? Math.min(...bays.map((bay) => bay.walls.length)) : 0,
    limit: limits.bracedFaces.value, bound: 'least', unit: '1',
    source: `statics of a stiff deck on upright faces (C); ${limits.bracedFaces.source}`,
    parts: cables.length > 0 ? cables : idsOf(model, 'post'),
  })];
};

/** Whether the bays, one on the other, reach from the lowest deck to the top one. */
export function joinsAllDecks(model: Model, bays: readonly Bay[]): boolean {
  const reached = bays.reduce((deck, bay) => (bay.low <= deck ? Math.max(deck, bay.high) : deck), 0);
  return bays.length > 0 && reached === model.deckTops.length - 1;
}
