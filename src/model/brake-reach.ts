import type { FittingKind } from '../read/index.ts';

/** How far a brake's lever reaches past its wheel, and how high its end stands up, mm. Common practice, no source. */
export const TOE = 16;

/** How far the lever's end is from the axis of the castor's plug, mm. */
export const brakeReach = ({ wheel, trail }: Pick<Extract<FittingKind, { is: 'castor' }>, 'wheel' | 'trail'>): number => trail + wheel / 2 + TOE;
