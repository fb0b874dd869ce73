export type * from './types.ts';
export type * from './order/index.ts';
export { loosePieces, numberedCuts, type CutPart, type Edges, type NumberedCut, type Rectangle } from './sheets/index.ts';
export { planOrder } from './order/index.ts';
export { cordPatterns, cordsFor, type CordPattern } from './cords.ts';
export { ownPanels, type OwnPanel, type OwnPiece, type PanelArea } from './own-panels.ts';
export { loadSolver, type Solver } from './solver.ts';
export { planTubes, tubeLetter, tubeLetters } from './tubes.ts';
