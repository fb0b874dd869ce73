export type * from './types.ts';
export { planFew, planLengths } from './plan-lengths.ts';
