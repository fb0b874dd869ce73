import type { Step } from './types.ts';

/** Whether a step turns the whole work. */
export const isTurn = ({ motions }: Pick<Step, 'motions'>): boolean => motions.some(({ kind }) => kind === 'turn');

/** Whether a step sets work on its own feet that lay on blocks before. */
export const isSetOnItsFeet = (step: Pick<Step, 'motions' | 'footing'>): boolean =>
  isTurn(step) && step.footing.before.length > 0 && step.footing.after.length === 0;
