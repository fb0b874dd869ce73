import type { Vec2 } from '../../model/index.ts';
import { arrowhead, line, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import type { Box } from '../types.ts';
import { beside, besideOnPaper, fixedBeside, GAP, ground, WALL_BESIDE, type FromBeside } from './fixed-beside.ts';
import { onwards } from './trial.ts';
import { hollowWall } from './wall-kind.ts';
import type { WallShown } from './wall-pieces.ts';

/** Height of the picture, and the floor in it, mm of paper. */
export const UNFIXED_HIGH = 46;
const FLOOR = UNFIXED_HIGH - 3;
/** Where the walls stand, from the left, mm of paper. */
const WALLS = { hollow: 14, full: 99 } as const;
/** How far an item has tipped, rad. */
const TIPPED = 0.3;

/**
 * An item never stands unfixed: from beside, what stands before a hollow wall with nothing that holds it tips, under a cross. It comes to another
 * wall, which is full, and is fixed there.
 */
export function unfixedMarks(wall: WallShown, item: FromBeside): readonly Mark[] {
  const { deep, high } = besideOnPaper(item);
  const hollow: Box = { x: WALLS.hollow, y: FLOOR - WALL_BESIDE.high, width: WALL_BESIDE.thick, height: WALL_BESIDE.high };
  const foot = hollow.x + WALL_BESIDE.thick + GAP + deep;
  const tipped = ([along, up]: Vec2): Vec2 => [foot + (along - deep) * Math.cos(TIPPED) + up * Math.sin(TIPPED), FLOOR + (along - deep) * Math.sin(TIPPED) - up * Math.cos(TIPPED)];
  return [
    ...ground(hollow.x - 10, hollow.x + 66, FLOOR), ...hollowWall(hollow), ...beside(tipped, deep, high, pens.cut), ...falling(tipped([deep, high])), ...crossed([hollow.x + 56, 9], 1.8),
    ...onwards([hollow.x + 72, FLOOR - WALL_BESIDE.high / 2]),
    ...fixedBeside(wall, item, [WALLS.full, FLOOR]), ...ticked([WALLS.full + 42, 9], 1.8),
  ];
}

/** An arrow round from over the upper corner of what tips, down before it. */
function falling([x, y]: Vec2): readonly Mark[] {
  const round = Array.from({ length: 7 }, (_, index): Vec2 => [x + 3 + 9 * Math.sin((index * 1.1) / 6), y + 5 - 9 * Math.cos((index * 1.1) / 6)]);
  const [before, tip] = [round.at(-2) ?? [x, y], round.at(-1) ?? [x, y]] as const;
  return [line({ ...pens.motion, width: 1.2 }, ...round), arrowhead([tip[0] + 2 * (tip[0] - before[0]), tip[1] + 2 * (tip[1] - before[1])], [tip[0] - before[0], tip[1] - before[1]], 4.6, 3.6)];
}
