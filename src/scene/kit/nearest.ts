import { placed } from '../../model/index.ts';
import type { StageHand } from './stage.ts';
import type { View } from '../types.ts';
import { STANDARD_VIEW } from './views.ts';

/** The part nearest to the eye. */
export function nearestOf(hand: StageHand, ids: readonly string[], { towardsEye: [ex, ey, ez] }: View = STANDARD_VIEW): string | undefined {
  const depth = (id: string): number => {
    const [x, y, z] = placed(hand.pose(id), [0, 0, 0]);
    return x * ex + y * ey + z * ez;
  };
  return [...ids].sort((a, b) => depth(b) - depth(a) || a.localeCompare(b))[0];
}
