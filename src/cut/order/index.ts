export type * from './types.ts';
export { planOrder } from './plan-order.ts';
