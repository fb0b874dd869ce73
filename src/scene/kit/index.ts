/** What the scenes of work are made with. */
export { tell, type Told } from '../told.ts';
export type * from '../types.ts';
export { barMarks, footMark, footRingsHome, fromFoot, halfOf, markReached, throughBars } from './bar-marks.ts';
export { turnedBy } from './directions.ts';
export { nearestOf } from './nearest.ts';
export { movedBy, onTheWay } from './on-the-way.ts';
export { openBox } from './open-box.ts';
export { panelLines } from './panel-lines.ts';
export { cornerPins, panelPins } from './panel-pins.ts';
export { pinDrilled, pinFastened } from './pin-close-up.ts';
export { sleeveEnds } from './sleeve-ends.ts';
export { atMost, slideWork, type Sliding } from './slide.ts';
export { foldedShape, foldsOf, pieceOfPanel, stageHand, type FoldedPanel, type StageHand } from './stage.ts';
export { turnOf, turnWork } from './turn.ts';
export { wallWork } from './wall.ts';
export { isFromBehind, viewOf } from './from-behind.ts';
export { STANDARD_VIEW } from './views.ts';
export { closeUpName, sceneName, type StepGivens, type WorkScene } from './work-scene.ts';
