import { atMost, homeAcrossBars, lidOpened, slideWork, type WorkScene } from '../../scene/kit/index.ts';

export const scene: WorkScene = { ...slideWork({ drawnOff: atMost(210), home: homeAcrossBars }), series: lidOpened };
