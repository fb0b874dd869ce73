import { wallWork, type WorkScene } from '../../scene/kit/index.ts';

export const scene: WorkScene = wallWork;
