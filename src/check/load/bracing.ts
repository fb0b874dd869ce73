import type { Model } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { deckLevels } from '../levels.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';
import { baysOf, type Bay } from './bays.ts';

/**
 * Least number of faces with crossed cables in any bay up to the top deck; where there are no cables, of faces with a
 * flat panel. Three upright faces hold a stiff deck against shift and turn in plan; two leave it free to turn
 * (statics). 0 where enough faces are held and the frame still gives way.
 */
export const bracing: Check = ({ model, limits, stance }) => {
  const faces = heldFaces(model);
  const { bracedFaces } = limits;
  const holding = idsOf(model, ...(idsOf(model, 'cable').length > 0 ? ['cable' as const] : ['flat-panel' as const]));
  return [judge({
    name: 'bracing', figure: stance.braced === null && faces >= bracedFaces.value ? 0 : faces,
    limit: bracedFaces.value, bound: 'least', unit: '1',
    source: `${gives(model)}statics of a stiff deck on upright faces, the whole frame solved (C); ${bracedFaces.source}`,
    parts: holding.length > 0 ? holding : idsOf(model, 'post'),
  })];
};

/** Which way a frame with too few held faces gives: front and back hold it sideways, left and right from front to back. */
function gives(model: Model): string {
  const held = new Set(baysOf(model).flatMap(({ faces }) => faces));
  if (!held.has('front') && !held.has('back')) return 'gives way sideways: neither front nor back is held; ';
  if (!held.has('left') && !held.has('right')) return 'gives way front to back: neither left nor right is held; ';
  return held.size < 3 ? 'turns in plan: two faces that meet are held; ' : '';
}

function heldFaces(model: Model): number {
  const bays = baysOf(model);
  const cabled = bays.filter(({ by }) => by === 'cables');
  if (idsOf(model, 'cable').length > 0) return joinsAllDecks(model, cabled) ? Math.min(...cabled.map(({ faces }) => faces.length)) : 0;
  return new Set(bays.flatMap(({ faces }) => faces)).size;
}

/** Whether the bays, one on the other, reach from the lowest deck to the top one. */
function joinsAllDecks(model: Model, bays: readonly Bay[]): boolean {
  const levels = deckLevels(model);
  const reached = bays.reduce((height, bay) => (bay.low <= height + 1 ? Math.max(height, bay.high) : height), Math.min(...levels));
  return bays.length > 0 && reached >= Math.max(...levels) - 1;
}
