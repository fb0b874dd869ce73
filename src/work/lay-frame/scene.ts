import { atMost, slideWork, toItsPlace, type WorkScene } from '../../scene/kit/index.ts';

/** The tubes on the near sides stand for the whole frame. */
export const scene: WorkScene = slideWork({
  drawnOff: atMost(210),
  leaders: (_, parts) => parts.filter(({ kind, place }) => place.at === 'side'
    && ((kind === 'long-tube' && place.side === 'front') || (kind === 'short-tube' && place.side === 'right'))),
  arrow: toItsPlace,
});
