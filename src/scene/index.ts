export type * from './types.ts';
export { closeUpScene } from './steps/close-up.ts';
export { momentScene } from './moment.ts';
export { stepScene } from './step-scene.ts';
export { sleeveEnds } from './stage.ts';
export { STANDARD_VIEW } from './views.ts';
export { finishedScene, letteredScene, partBody, runScene } from './whole.ts';
