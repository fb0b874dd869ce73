import type { Plan, Step } from '../plan/index.ts';

/** The steps after another that tie cords. */
export const cordStepsAfter = ({ steps }: Plan, { number: after }: Step): readonly Step[] =>
  steps.filter(({ number, newParts }) => number > after && newParts.some(({ kind }) => kind === 'cable'));
