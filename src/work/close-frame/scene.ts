import type { Part } from '../../model/index.ts';
import { atMost, slideWork, type Sliding, type WorkScene } from '../../scene/kit/index.ts';

/** Whether a part is a joint that is pushed onto a long tube: a frame may have none on its side. */
const meetsTube = ({ hand, step }: Sliding, { kind, place }: Part): boolean =>
  kind === 'joint' && place.at === 'corner' && step.present.some((id) => {
    const other = hand.part(id);
    return other.kind === 'long-tube' && other.place.at === 'side' && other.place.side === place.corner.y;
  });

/** The whole end is new to the eye, the arrows are its joints'. */
export const scene: WorkScene = slideWork({
  drawnOff: atMost(190),
  tintsMoved: true,
  leaders: (sliding, parts) => parts.filter((part) => meetsTube(sliding, part)),
});
