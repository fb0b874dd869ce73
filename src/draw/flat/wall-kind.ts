import type { Vec2 } from '../../model/index.ts';
import { hatching } from '../kit/hatching.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import type { Box } from '../types.ts';
import { grain, ringOf, type WallShown } from './wall-pieces.ts';

/** Width of the picture, and of the walls cut through in it; their height, and from the row's middle to each. */
export const KIND_WIDTH = 21;
const WALL = { thick: 9, high: 14 } as const;
const FROM_MIDDLE = 4.4;
/** Thickness of a board and of a stud behind it, mm of paper. */
const BOARD = 1.7;
const STUD = 2.4;

/** Not here, there instead: a hollow wall in which a screw's point is in the air, with a cross, and from it the wall that is full, with a tick. From the left edge and the row's middle, mm of paper. */
export function kindOfWall({ kind }: WallShown, [x, y]: Vec2): readonly Mark[] {
  const hollow: Box = { x, y: y - FROM_MIDDLE - WALL.high, width: WALL.thick, height: WALL.high };
  const full: Box = { ...hollow, y: y + FROM_MIDDLE };
  const [sign, middle] = [x + WALL.thick + 6.4, x + WALL.thick / 2];
  return [
    ...hollowWall(hollow), ...screwIn(hollow), ...crossed([sign, hollow.y + WALL.high / 2 + 5]),
    line({ ...pens.motion, width: 0.9 }, [middle, y - 2.9], [middle, y]), arrowhead([middle, y + 3.2], [0, 1], 4),
    ...fullWall({ kind }, full), ...screwIn(full), ...ticked([sign, full.y + WALL.high / 2 + 5]),
  ];
}

/** A wall that is full, cut through. */
export const fullWall = ({ kind }: Pick<WallShown, 'kind'>, box: Box): readonly Mark[] =>
  [area('core', ringOf(box)), ...(kind === 'masonry' ? hatching(ringOf(box), 2.4).map(([from, to]) => line(pens.edge, from, to)) : grain(box)), outline(pens.cut, ringOf(box))];

/** Boards on both sides of studs, and air between. */
export function hollowWall(box: Box): readonly Mark[] {
  const boards = [box.x, box.x + box.width - BOARD].map((x) => ringOf({ ...box, x, width: BOARD }));
  const studs = [box.y, box.y + box.height - STUD].map((y) => ringOf({ x: box.x + BOARD, y, width: box.width - 2 * BOARD, height: STUD }));
  return [area('white', ringOf(box)), ...[...boards, ...studs].flatMap((ring) => [area('core', ring), outline(pens.edge, ring)]), outline(pens.cut, ringOf(box))];
}

/** A screw through the face on the right, its head before it. */
function screwIn({ x, y, width, height }: Box): readonly Mark[] {
  const [face, middle] = [x + width, y + height / 2];
  const shank: readonly Vec2[] = [[face + 2, middle - 2.2], [face + 0.6, middle - 0.8], [face - 5, middle - 0.8], [face - 6.6, middle], [face - 5, middle + 0.8], [face + 0.6, middle + 0.8], [face + 2, middle + 2.2]];
  return [outline({ ...pens.motion, width: 1.4, colour: 'white' }, shank), area('ink', shank)];
}
