import { atMost, slideWork, toItsPlace, type WorkScene } from '../../scene/kit/index.ts';

/** Frames over the work, and pale where they will be. */
export const scene: WorkScene = slideWork({
  drawnOff: atMost(230),
  tintsMoved: true,
  leaders: (_, parts) => parts.filter(({ shape }) => shape.form === 'tube'),
  arrow: toItsPlace,
  bodies: ({ hand, moving }) => moving.map((id) => ({ ...hand.body(id, 'pale'), id: `${id}#home` })),
});
