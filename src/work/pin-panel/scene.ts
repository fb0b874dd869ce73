import { atMost, isToldByPoints, pinFastened, plateFastened, slideWork, type WorkScene } from '../../scene/kit/index.ts';

export const scene: WorkScene = { ...slideWork({ drawnOff: atMost(75) }), closeUp: (givens) => (isToldByPoints(givens) ? pinFastened(givens) : plateFastened(givens)) };
