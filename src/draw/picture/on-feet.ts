import type { OnFeet } from '../../scene/index.ts';
import type { Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { handDown, HAND_HIGH } from '../flat/hands.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import { arrowhead, line, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { paperGround } from './compose.ts';
import { elevationMarks, elevationOf, reachAt, type Elevation } from './elevation.ts';
import type { LineDrawer } from './line-drawer.ts';

/** The work is so high at most; over it there is room for a hand with its arrow, under it for the floor and a sign, beside it for its floor, mm of paper. */
const HIGH = 46;
const ROOM = { over: HAND_HIGH + 1.5, floor: 7.5, sign: 11, aside: 8 } as const;
/** Between the work as it rocks and as it stands, with an arrow onwards, mm of paper. */
const BETWEEN = 16;
/** The floor is so much lower under a foot that does not stand, as far as so much before it, mm of paper; and how wide its line is. */
const HOLLOW = { deep: 6, before: 5 } as const;
const FLOOR = { ...pens.cut, width: 0.9 } as const;
/** The hand presses so far inwards from the work's end, mm of paper. */
const INWARDS = 7;

/** Pressed at its end, the work rocks where the floor is hollow under a foot: crossed; moved to a level place all its feet stand: ticked. */
export function composeOnFeet(feet: OnFeet, { width }: Pick<Paper, 'width'>, draw: LineDrawer): DrawnPicture {
  const whole = elevationOf(feet.bodies, feet.view, draw);
  const { min, max } = whole.drawing.bounds;
  const each = (width - BETWEEN) / 2;
  const scale = Math.min((each - 2 * ROOM.aside) / (max[0] - min[0]), HIGH / (max[1] - feet.floor));
  const high = scale * (max[1] - feet.floor);
  const height = ROOM.over + high + ROOM.floor + ROOM.sign;
  const box = (x: number): Box => ({ x, y: 0, width: each, height });
  const middle = height - ROOM.sign / 2;
  const stands = (x: number, isHollow: boolean): readonly Mark[] => standing(whole, feet, isHollow, scale, box(x));
  return toPicture({ width, height }, [
    paperGround({ width, height }),
    ...stands(0, true), ...crossed([each / 2, middle]),
    line(band(0.9), [each + 2, ROOM.over + high / 2], [each + BETWEEN - 6, ROOM.over + high / 2]), arrowhead([each + BETWEEN - 2, ROOM.over + high / 2], [1, 0], 4.2, 3.8),
    ...stands(each + BETWEEN, false), ...ticked([each + BETWEEN + each / 2, middle]),
  ]);
}

/** The work in its room, a hand on its right end, on a floor that is level or hollow under the foot there. */
function standing(whole: Elevation, { floor, foot }: OnFeet, isHollow: boolean, scale: number, { x, width }: Box): readonly Mark[] {
  const { min, max } = whole.drawing.bounds;
  const fit: Fit = { scale, origin: [x + width / 2 - ((min[0] + max[0]) / 2) * scale, ROOM.over + max[1] * scale] };
  const at = (place: Vec2): Vec2 => onPaper(fit, place);
  const [left, ground] = at([min[0], floor]);
  const [right] = at([max[0], floor]);
  const [from, to] = foot.map((each) => at([each, floor])[0]) as [number, number];
  const end = at([reachAt(whole, max[1] - 4, 1), max[1]]);
  return [
    ...elevationMarks(whole, fit),
    ...(isHollow ? hollow([left, right], [from, to], ground) : [line(FLOOR, [left - ROOM.aside + 1, ground], [right + ROOM.aside - 1, ground])]),
    ...handDown([end[0] - INWARDS, end[1]]),
  ];
}

/** The floor with its hollow under a foot, and how far that is off it. */
function hollow([left, right]: Vec2, [from, to]: Vec2, ground: number): readonly Mark[] {
  const middle = (from + to) / 2;
  const low = ground + HOLLOW.deep;
  const gap: readonly [Vec2, Vec2] = [[middle, ground + 0.5], [middle, low - 0.6]];
  return [
    line(FLOOR, [left - ROOM.aside + 1, ground], [from - HOLLOW.before, ground], [from - 1, low], [right + ROOM.aside - 1, low]),
    line(pens.motion, ...gap), arrowhead(gap[1], [0, 1], 2.2, 2), arrowhead(gap[0], [0, -1], 2.2, 2),
  ];
}
