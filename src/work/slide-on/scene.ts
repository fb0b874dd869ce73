import { atMost, slideWork, type WorkScene } from '../../scene/kit/index.ts';

/** So far off that the bars' ends are seen. */
export const scene: WorkScene = slideWork({ drawnOff: atMost(600) });
