import type { Ink } from '../ink.ts';

/** A right and a wrong state of the same thing, each for a viewBox of 72 × 48 units, without tick and cross. */
export interface Pair {
  readonly right: Ink;
  readonly wrong: Ink;
}
