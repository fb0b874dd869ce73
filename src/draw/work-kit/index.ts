/** What the pictures of work are made with. */
export { cutOnBoardPicture, framePicture, guidePicture, pinTrial, sectionSeries, stopPicture, tabPunchPicture, type CornerRow, type TabRow, spacingPicture } from '../flat/index.ts';
export { hardwareOf } from '../hardware.ts';
export { arcArrow, arrow } from '../pictograms/arrows.ts';
export * from '../pictograms/ink.ts';
export * from '../pictograms/motifs.ts';
export type { Paper } from '../picture/index.ts';
export { lettersWritten, markedAlike, postKinds, type PostKind } from '../post-kinds.ts';
export type { DrawnPicture } from '../types.ts';
export { brakesLocked, brakesSet, endsTried } from './ends-fitted.ts';
export { cableSheets, clipsTold, endSheet, sleevesMeasured, sleevesTried, socketsFitted, wallSheets } from './fitted-pictures.ts';
export { blankOnStock, blankTraced, cutBars, creaseTried, cutBarsInPieces, cornersCut, halfCutMended, halfCutTried, markedAt, platePunched, plateSheet, plateTraced, punchedPanel, stockSheet, withPattern } from './bench-pictures.ts';
export { onBarsMeasured } from './on-bars.ts';
export type { DrawnFlat, FlatGivens, WorkPicture } from './work-picture.ts';
