import { turnWork, type WorkScene } from '../../scene/kit/index.ts';

/** The item stood on its feet, and looked at there. */
export const scene: WorkScene = { ...turnWork, standsUp: true };
