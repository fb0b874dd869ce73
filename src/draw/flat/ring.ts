import type { Vec2 } from '../../model/index.ts';
import type { Mark } from '../kit/marks.ts';
import { circle, line } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import type { Fit } from '../kit/fit.ts';
import { onPaper } from '../kit/fit.ts';
import { discWindow } from '../kit/clip.ts';
import { clipMarks } from '../kit/clip-marks.ts';

/** A feature that is under 4 mm on paper, shown larger in a ring with a leader to its place. */
export interface RingDetail {
  readonly name: string;
  /** Middle of the detail in the model. */
  readonly at: Vec2;
  /** Middle and radius of the large ring, mm of paper. */
  readonly centre: Vec2;
  readonly radius: number;
  readonly scale: number;
}

/** The view inside a ring: same way up as the whole view, larger. */
export function ringView({ at, centre, scale }: RingDetail): Fit {
  return { scale, origin: [centre[0] - at[0] * scale, centre[1] + at[1] * scale] };
}

/** The small ring at the feature, the leader and the large ring with what `draw` shows in it. */
export function ringMarks(detail: RingDetail, whole: Fit, draw: (view: Fit) => readonly Mark[]): readonly Mark[] {
  const { centre, radius, scale, name } = detail;
  const source = onPaper(whole, detail.at);
  const small = Math.max(2, (radius / scale) * whole.scale);
  const way: Vec2 = [centre[0] - source[0], centre[1] - source[1]];
  const distance = Math.hypot(way[0], way[1]);
  const on = (from: Vec2, length: number): Vec2 => [from[0] + (way[0] / distance) * length, from[1] + (way[1] / distance) * length];
  return [
    circle(source, small, pens.ring),
    line(pens.ring, on(source, small), on(centre, -radius)),
    circle(centre, radius, null, 'white'),
    { mark: 'view', name, scale, marks: clipMarks(draw(ringView(detail)), discWindow(centre, radius)) },
    circle(centre, radius, pens.ring),
  ];
}
