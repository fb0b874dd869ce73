export type * from './types.ts';
export { planTubes } from './tubes.ts';
