import { isToldByPoints, type CornerPlace } from '../../model/index.ts';
import { atMost, nearestOf, pinFastened, sleeveFastened, slideWork, type Sliding, type WorkScene } from '../../scene/kit/index.ts';

/** Every pin has its arrow, of the nuts only those at the near post. */
export const scene: WorkScene = {
  ...slideWork({
    drawnOff: atMost(85),
    leaders: (sliding, parts) => {
      const near = nearCorner(sliding);
      return parts.filter(({ kind, place }) => kind === 'joint-pin' || (place.at === 'sleeve' && isSame(place.corner, near)));
    },
  }),
  closeUp: (givens) => (isToldByPoints(givens.model) ? pinFastened(givens) : sleeveFastened(givens)),
};

const isSame = (one: CornerPlace, other: CornerPlace | null): boolean => one.x === other?.x && one.y === other.y;

/** The corner of the post of this side that is nearer to the eye. */
function nearCorner({ hand, step }: Sliding): CornerPlace | null {
  const posts = step.present.filter((id) => {
    const { kind, place } = hand.part(id);
    return kind === 'post' && place.at === 'corner' && place.corner.y === step.side;
  });
  const near = nearestOf(hand, posts);
  const place = near === undefined ? undefined : hand.part(near).place;
  return place?.at === 'corner' ? place.corner : null;
}
