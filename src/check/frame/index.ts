export { FrameError, MechanismError } from './errors.ts';
export { solveFrame } from './solve-frame.ts';
export { swayOf, type Drift, type SwayInput, type SwayResult } from './sway.ts';
export type { SwayCable, SwayLevel, SwayPost } from './sway-input.ts';
export { freedoms } from './types.ts';
export type {
  Cable, EndForces, EndTurn, Frame, FrameNode, FrameResult, Freedom, LineLoad, Member, NodeLoad, Section, Six, Support,
} from './types.ts';
