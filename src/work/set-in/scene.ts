import { placed, plus } from '../../model/index.ts';
import { atMost, homeInSection, nearestOf, slideWork, type Mark, type Sliding, type WorkScene } from '../../scene/kit/index.ts';

/** So far off that the box is seen to go inside the bars; an arrow to the two of them that are nearest. */
export const scene: WorkScene = slideWork({ drawnOff: atMost(260), marks: toBars, home: homeInSection });

function toBars({ model, hand, step, moving, offsets }: Sliding): readonly Mark[] {
  const there = new Set([...step.present, ...moving]);
  const bars = model.connections.flatMap((each) => (each.is === 'wrap' && there.has(each.panel) && hand.part(each.panel).shape.form === 'folded' ? [each.bar] : []));
  const off = moving.map((id) => offsets.get(id)).find((offset) => offset !== undefined) ?? [0, 0, 0];
  const first = nearestOf(hand, bars);
  const second = nearestOf(hand, bars.filter((bar) => bar !== first));
  return [first, second].flatMap((bar): readonly Mark[] => {
    if (bar === undefined) return [];
    const to = placed(hand.pose(bar), [0, 0, 0]);
    return [{ mark: 'arrow', path: [plus(to, off), to] }];
  });
}
