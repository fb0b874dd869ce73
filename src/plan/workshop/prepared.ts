import { ACTIONS, WORK, type Action } from '../../work/facts.ts';
import type { Step } from '../types.ts';
import type { OrderedWork, Prepared } from './types.ts';

const preparedAs = (how: 'all' | 'sample'): readonly Action[] => ACTIONS.filter((action) => WORK[action].prepared === how);

/** Whether a step is done the day before, for all pieces, and so is none of the learners'. */
export const isPrepared = (step: Step): boolean => WORK[step.action].prepared === 'all';

/** What the trainer prepares: all cutting to size, and one marked sample of each kind. */
export function preparedFor(works: readonly OrderedWork[]): readonly Prepared[] {
  return works.flatMap((work, index) => [
    ...preparedAs('all').flatMap((action) => jobOf(work, index, action, work.count, false)),
    ...preparedAs('sample').flatMap((action) => jobOf(work, index, action, 1, true)),
  ]);
}

function jobOf({ steps }: OrderedWork, work: number, action: Step['action'], pieces: number, sample: boolean): readonly Prepared[] {
  const own = steps.filter((step) => step.action === action);
  if (own.length === 0) return [];
  // A sample is the first piece of the step, measured: the others are traced from it.
  const once = own.reduce((sum, step) => sum + (sample ? step.minutes / (1 + (step.times - 1) * (WORK[action].traced ?? 1)) : step.minutes), 0);
  return [{ work, action, steps: own, pieces, sample, minutes: once * pieces }];
}
