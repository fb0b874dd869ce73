export type * from './types.ts';
export { buildModel } from './build.ts';
export { joinedBy } from './connections.ts';
export { axesFor } from './deck.ts';
export { FLAT, WRAPPED } from './folding.ts';
export { cornersOf } from './short/corners.ts';
export { flatPattern, onSide } from './pattern.ts';
export { asMatrix, chained, moved, placed, standstill, turned, undone } from './pose.ts';
export { foldSection, turnsAt, type Section } from './section.ts';
export { chainSection, reachedAt, turnsAt as bendTurnsAt } from './patterns/chain.ts';
export { alongSide, outwards } from './patterns/sides.ts';
export { loadSolids, type Box3, type Placed, type Solids } from './solids/kernel.ts';
export {
  creaseCount, creaseSpacing, drilledSectionModulus, runToHalfCut, runToInnerFace, secondMoment, sectionModulus, wallArea, wrapAngle,
} from './profiles/round.ts';
export { creasePlaces, halfCutPlace, patternWrap, wrapOf, type Wrap } from './wrap.ts';
