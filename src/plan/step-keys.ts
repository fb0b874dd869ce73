import type { Model } from '../model/index.ts';
import { runJobs } from './deck-jobs.ts';
import { itemJobs } from './item-jobs.ts';

/** The key of every step that a model's plan will have, in no order; quick, nothing is proven. */
export const stepKeys = (model: Model): readonly string[] =>
  [...new Set(model.groups.map((group) => group.piece))].flatMap((run) => runJobs(model, run)).concat(itemJobs(model)).map(({ key }) => key);
