import type { Step } from './types.ts';

/** Whether a step turns the whole work. */
export const isTurn = ({ motions }: Pick<Step, 'motions'>): boolean => motions.some(({ kind }) => kind === 'turn');
