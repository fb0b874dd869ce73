import { isToldByPoints } from '../../model/index.ts';
import { atMost, pinFastened, plateFastened, slideWork, type WorkScene } from '../../scene/kit/index.ts';

export const scene: WorkScene = { ...slideWork({ drawnOff: atMost(75) }), closeUp: (givens) => (isToldByPoints(givens.model) ? pinFastened(givens) : plateFastened(givens)) };
