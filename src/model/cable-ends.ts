import type { Model } from './types.ts';

/** Whether anything is tied with cords. */
export const hasCords = ({ parts }: Pick<Model, 'parts'>): boolean => parts.some(({ kind }) => kind === 'cable');

/** What a cable is cut longer for and where its second loop is tied, mm: lengths of a thin cord, common practice, no source. */
const ENDS = {
  /** Doubled for the loop at its end, with the knot. */
  loop: 205,
  /** Doubled for the loop in its middle, with the knot. */
  second: 195,
  /** From that loop to the stud. */
  before: 150,
  /** From that loop round the stud and back through it, two hitches and a hand's hold. */
  tail: 600,
} as const;

/** How a cable is cut and tied. Lengths in mm. */
export interface CableEnds {
  /** Of the piece that is cut. */
  readonly cut: number;
  /** From stud to stud: the two stretches that follow. */
  readonly length: number;
  /** From the inside of the loop at its end to that of the second one. */
  readonly between: number;
  /** From the second loop to the stud. */
  readonly before: number;
  /** What of the cut length goes into the loop at the end with its knot, and into the second one. */
  readonly loops: readonly [end: number, second: number];
}

/** A cable that is to be taut between two studs, `length` mm from stud to stud. */
export function cableEnds(length: number): CableEnds {
  const told = Math.round(length);
  const between = told - ENDS.before;
  return { cut: Math.ceil((between + ENDS.loop + ENDS.second + ENDS.tail) / 10) * 10, length: told, between, before: ENDS.before, loops: [ENDS.loop, ENDS.second] };
}

/** N that a taut cable pulls with at the least: our default, all knots drawn home. */
export const TAUT = 100;

/** How far a cable of that length gives way under a mass, kg, hung on its middle at the most, mm: a string's statics (C), `m g L / 4 T`, rounded down to 5; under less than a kilogram to 1. */
export function cableTest(length: number, mass = 1): { readonly mass: number; readonly most: number } {
  const step = mass < 1 ? 1 : 5;
  return { mass, most: Math.max(step, Math.floor((mass * 9.80665 * length) / (4 * TAUT) / step) * step) };
}
