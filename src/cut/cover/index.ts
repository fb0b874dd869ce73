export type * from './types.ts';
export { cover, greatestCommon, type CoverAnswer } from './whole.ts';
export { boundAt } from './prices.ts';
