import type { Mark } from '../types.ts';
import { handsAlong } from './held.ts';
import { nearestOf } from './nearest.ts';
import type { Sliding } from './slide.ts';

/** What has more parts than this is carried with both hands, or by two people; less one hand brings. */
const ONE_HAND = 2;

/** The hands that carry what slides, the unit nearest to the eye: of one person where the other holds what it comes to, else one hand of each of the two. */
export function carryingHands({ step, hand, offsets, moving }: Sliding): readonly Mark[] {
  const nearest = nearestOf(hand, moving);
  const unit = step.motions.flatMap((motion) => (motion.kind === 'slide' && nearest !== undefined && motion.parts.includes(nearest) ? motion.parts : []));
  if (unit.length <= ONE_HAND) return [];
  const bodies = unit.map((id) => hand.body(id, 'new', offsets.get(id)));
  return step.people === 2 && step.held.length === 0 ? handsAlong(bodies, 'two') : handsAlong(bodies, 'first');
}
