import { atMost, barMarks, partsShown, sleeveEnds, slideWork, type WorkScene } from '../../scene/kit/index.ts';

/** Bars that sleeves are pushed over later have their marks: the rings tell which end stays free. */
export const scene: WorkScene = slideWork({
  drawnOff: atMost(190),
  bodies: (sliding) => partsShown(sliding.step).filter((id) => sleeveEnds(sliding.model, id).length > 0).flatMap((id) => barMarks(sliding, id)),
});
