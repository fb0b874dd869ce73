import { turnWork, type WorkScene } from '../../scene/kit/index.ts';

export const scene: WorkScene = turnWork('near');
