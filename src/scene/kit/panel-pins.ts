import { placed, plus, times } from '../../model/index.ts';
import type { Mark } from '../types.ts';
import { nearestOf } from './nearest.ts';
import { atMost, slideWork, type Sliding } from './slide.ts';
import type { WorkScene } from './work-scene.ts';
import { tell } from '../told.ts';

/** Pins are put in one after the other: numbered from the first of the side. */
const pinOrder = ({ hand, fresh, offsets }: Sliding): readonly Mark[] => fresh.map((id, index) => {
  const { place } = hand.part(id);
  const number = place.at === 'tab' ? place.index : index + 1;
  return { mark: 'order', at: plus(placed(hand.pose(id), [0, 0, 12]), offsets.get(id) ?? [0, 0, 0]), told: tell.number(number) };
});

/** One pin once more, enlarged. */
function enlargedPin({ hand, fresh, offsets }: Sliding): readonly Mark[] {
  const id = nearestOf(hand, fresh);
  if (id === undefined) return [];
  return [{ mark: 'detail', at: plus(placed(hand.pose(id), [0, 0, 0]), times(offsets.get(id) ?? [0, 0, 0], 0.5)), radius: 60 }];
}

/** Pins pressed into a tab from above. */
export const panelPins: WorkScene = slideWork({ drawnOff: atMost(75), counts: pinOrder, marks: enlargedPin });
