export { FrameError, MechanismError } from './errors.ts';
export { solveFrame } from './solve-frame.ts';
export { postMomentUnder, standOf, type Drift, type Stand, type SwayInput } from './sway.ts';
export type { SwayLoad } from './sway-frame.ts';
export type { SwayCable, SwayLevel, SwayPlate, SwayPost } from './sway-input.ts';
export type {
  Cable, EndForces, EndTurn, Frame, FrameNode, FrameResult, Freedom, LineLoad, Member, NodeLoad, Section, Six, Support,
} from './types.ts';
