export { tell, type Told } from './told.ts';
export type * from './types.ts';
export { closeUpScene, momentScene, stepScene } from './step-scene.ts';
export { sleeveEnds } from './kit/sleeve-ends.ts';
export { STANDARD_VIEW } from './kit/views.ts';
export { finishedScene, letteredScene, partBody, runScene } from './whole.ts';
export { isAsUsed, poseAfter, rolledSteps, type Rolled } from './rolled/history.ts';
export { rolledScenes } from './rolled/rolled-scenes.ts';
export { proppedScene } from './propped.ts';
