export type * from './types.ts';
export { cover } from './whole.ts';
export { greatestCommon } from './whole-costs.ts';
export { prefer, type Wishes } from './prefer.ts';
export { withoutSurplus } from './surplus.ts';
