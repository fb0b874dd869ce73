export type * from './types.ts';
export type { Job } from './jobs.ts';
export { orderedJobs, planItem, provenClashes } from './plan.ts';
export { ACTIONS, WORK } from '../work/facts.ts';
export { rulesFor, sidesInOrder } from './rules.ts';
export * from './workshop/index.ts';
export { stepNames } from './step-names.ts';
