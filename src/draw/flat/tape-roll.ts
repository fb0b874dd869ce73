import type { Vec2 } from '../../model/index.ts';
import { area, circle, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** A roll of tape seen from its end, and half of the thickness of what comes off it, mm of paper. */
const ROLL = { radius: 6, core: 2.6, half: 0.6 } as const;

/** The tape on its way from where it sticks to the middle of its roll. */
export function tapeRoll(from: Vec2, centre: Vec2): readonly Mark[] {
  const [x, y] = [centre[0] - from[0], centre[1] - from[1]];
  const length = Math.hypot(x, y);
  const [across, down]: Vec2 = [(-y / length) * ROLL.half, (x / length) * ROLL.half];
  return [
    area('ink', [[from[0] + across, from[1] + down], [centre[0] + across, centre[1] + down], [centre[0] - across, centre[1] - down], [from[0] - across, from[1] - down]]),
    circle(centre, ROLL.radius, pens.cut, 'ink'), circle(centre, ROLL.core, pens.cut, 'white'),
  ];
}
