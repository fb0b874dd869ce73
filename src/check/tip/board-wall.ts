import type { Declared, WallKind } from '../../read/index.ts';
import { judge } from '../judge.ts';
import type { Limits } from '../limits.ts';
import type { Finding } from '../types.ts';

/** The wall that an item is fixed to, null where it need not be: `isAsked` by any of the tipping checks. */
export const wallFor = ({ wall }: Pick<Declared, 'wall'>, isAsked: boolean): WallKind | null => (isAsked ? wall : null);

/** N that a bracket must hold by itself, twice the pull at the top, against what a board alone holds: nothing. */
export function boardWalls(wall: WallKind | null, { tippingForce, wallPull }: Limits, parts: readonly string[]): readonly Finding[] {
  return wall !== 'board' ? [] : [judge({
    name: 'wall-hold', figure: wallPull.value * tippingForce.value, limit: 0, bound: 'most', unit: 'N',
    source: `a board alone holds no screw, common practice, no source; ${wallPull.source}; ${tippingForce.source}`, parts, otherwise: 'caution',
  })];
}
