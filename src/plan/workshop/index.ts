export type * from './types.ts';
export { preparingPairs, toolsAtOnce, type ToolCount } from './at-once.ts';
export { longestDay } from './practice.ts';
export { timetableOf } from './timetable.ts';
