export type * from './types.ts';
export { planLengths } from './plan-lengths.ts';
