import { atMost, pinFastened, slideWork, type WorkScene } from '../../scene/kit/index.ts';

export const scene: WorkScene = { ...slideWork({ drawnOff: atMost(85) }), closeUp: pinFastened };
