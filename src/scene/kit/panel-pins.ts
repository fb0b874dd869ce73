import { dot, placed, plus, times } from '../../model/index.ts';
import type { Mark } from '../types.ts';
import { turnedBy } from './directions.ts';
import { nearestOf } from './nearest.ts';
import { openBox } from './open-box.ts';
import { atMost, slideWork, type Sliding } from './slide.ts';
import { viewOf } from './stand.ts';
import type { WorkScene } from './work-scene.ts';
import { tell } from '../told.ts';

/** Pins are put in one after the other: numbered from the first of the side. */
const pinOrder = ({ hand, fresh, offsets }: Sliding): readonly Mark[] => fresh.map((id, index) => {
  const { place } = hand.part(id);
  const number = place.at === 'tab' ? place.index : index + 1;
  return { mark: 'order', at: plus(placed(hand.pose(id), [0, 0, 12]), offsets.get(id) ?? [0, 0, 0]), told: tell.number(number) };
});

/** One pin once more, enlarged: of those whose heads are seen, where any are. */
function enlargedPin({ model, step, hand, fresh, offsets }: Sliding): readonly Mark[] {
  const view = viewOf(model, step);
  const seen = fresh.filter((pin) => dot(turnedBy(hand.pose(pin), [0, 0, 1]), view.towardsEye) > 0);
  const id = nearestOf(hand, seen.length === 0 ? fresh : seen, view);
  if (id === undefined) return [];
  return [{ mark: 'detail', at: plus(placed(hand.pose(id), [0, 0, 0]), times(offsets.get(id) ?? [0, 0, 0], 0.5)), radius: 60 }];
}

/** Pins pressed into a tab from above. */
export const panelPins: WorkScene = slideWork({ drawnOff: atMost(75), counts: pinOrder, marks: enlargedPin });

/** Pins pressed into the corners of a box from within. */
export const cornerPins: WorkScene = slideWork({ drawnOff: atMost(75), counts: pinOrder, marks: enlargedPin, standing: openBox });
