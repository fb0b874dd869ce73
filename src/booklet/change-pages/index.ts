export { changePages } from './change-pages.tsx';
export { ranges } from './ranges.ts';
export { ASPECTS, type Change, type ChangePagesInput, type Pieces, type Reprint, type StepWork, type StillServing, type Told } from './types.ts';
