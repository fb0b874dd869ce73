export type * from './types.ts';
export { cover, greatestCommon, type CoverAnswer } from './whole.ts';
export { prefer, type Wishes } from './prefer.ts';
export { withoutSurplus } from './surplus.ts';
export { boundAt } from './prices.ts';
