export type * from './types.ts';
export { suppliesOf, toolSizesOf, WHEEL_RIM, type ToolSize } from './supplies.ts';
export { planItem } from './plan.ts';
export { ACTIONS, RULES, WORK } from '../work/facts.ts';
export * from './workshop/index.ts';
export { afterTurn } from './found/standing.ts';
export { findPlan } from './found/plan.ts';
export { faultsOf } from './found/prove.ts';
export type { FoundPlan, FoundStep } from './found/types.ts';
