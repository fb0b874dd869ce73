import { turnWork, type WorkScene } from '../../scene/kit/index.ts';

/** The item stood on its feet, and looked at with a plumb line. */
export const scene: WorkScene = { ...turnWork, standsPlumb: true };
