/** A box in section. */
import { bold, stroke, thin, together } from '../ink.ts';
import type { Pair } from './pair.ts';

/** Its walls stand square on its floor. */
export const wallsUpright: Pair = {
  right: together(stroke('M14 8V40H58V8', bold), stroke('M14 32H22V40M58 32H50V40', thin)),
  wrong: together(stroke('M4 10L16 40H56L68 10', bold), stroke('M13 32L22 32V40M59 32L50 32V40', thin)),
};
