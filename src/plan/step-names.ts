import type { Model } from '../model/index.ts';
import { runJobs } from './deck-jobs.ts';
import { itemJobs } from './item-jobs.ts';
import type { Step } from './types.ts';

/** What every step that a model's plan will have is called by, in no order; quick, nothing is proven. */
export const stepNames = (model: Model): readonly Pick<Step, 'key' | 'action'>[] =>
  [...new Set(model.groups.map((group) => group.piece))].flatMap((run) => runJobs(model, run)).concat(itemJobs(model)).map(({ key, action }) => ({ key, action }));
