import { bold, stroke, straight, thin, together } from '../ink.ts';
import { floor } from '../motifs.ts';
import type { Pair } from './pair.ts';

/** Two legs that are joined. */
const legs = stroke(`${straight(20, 37.5, 20, 4)}${straight(52, 37.5, 52, 4)}${straight(20, 7, 52, 7)}${straight(20, 23, 52, 23)}`, bold);

/** All feet stand on the floor. */
export const feetStand: Pair = {
  right: together(legs, floor(4, 68, 39)),
  wrong: together(legs, stroke('M4 39H34L40 46.5H68', thin)),
};
