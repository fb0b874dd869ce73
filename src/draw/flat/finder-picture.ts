import type { Vec2 } from '../../model/index.ts';
import { area, arrowhead, circle, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { crossAt } from './bare-wall.ts';
import { FINDER, finder } from './finder.ts';
import { handOnto } from './hands.ts';
import { bond, grain, ringOf, type WallShown } from './wall-pieces.ts';

/** Height of the picture, mm of paper. */
export const FINDER_HIGH = 42;
/** The wall from before on which the finder is led to and fro, and the two on which it tells of a wire and of none, mm of paper. */
const LED = { x: 4, width: 62 } as const;
const TOLD = { width: 34, x: [76, 120] } as const;
const WALL = { y: 4, height: 34 } as const;

/**
 * A finder is led over the bare wall, level and upright, wherever a hole is to come. Where its lamp lights and it sounds there is a wire or a pipe
 * behind it and no hole comes; where it is still, one may (common practice, no source).
 */
export function finderMarks(wall: WallShown): readonly Mark[] {
  const middle = WALL.y + WALL.height / 2;
  const [over, clear] = TOLD.x;
  const at = LED.x + LED.width / 2;
  const wire = over + TOLD.width * 0.5;
  return [
    ...face(wall, LED.x, LED.width), ...[0.22, 0.78].flatMap((share) => crossAt([LED.x + share * LED.width, middle])),
    ...handOnto([at, middle + FINDER.high + 0.6], [0, -1], 0.8), ...finder([at, middle], false),
    ...toAndFro([at, middle - 1.5], [1, 0], 11), ...toAndFro([at, WALL.y + 5.4], [0, 1], 1.4),
    ...face(wall, over, TOLD.width), line({ ...pens.motion, width: 2.4, colour: 'white' }, [wire, WALL.y], [wire, WALL.y + WALL.height]), line({ ...pens.halfCut, width: 1 }, [wire, WALL.y], [wire, WALL.y + WALL.height]),
    ...finder([wire, middle], true), ...onGround(crossed, [over + TOLD.width - 6, WALL.y + WALL.height - 6]),
    ...face(wall, clear, TOLD.width), ...finder([clear + TOLD.width / 2, middle], false), ...onGround(ticked, [clear + TOLD.width - 6, WALL.y + WALL.height - 6]),
  ];
}

/** A stretch of the wall from before. */
function face({ kind }: WallShown, x: number, width: number): readonly Mark[] {
  const box = { x, width, ...WALL };
  return [area('panel', ringOf(box)), ...(kind === 'masonry' ? bond(box) : grain(box)), outline(pens.cut, ringOf(box))];
}

/** Arrows away from a place both ways, from so far beside it on. */
const toAndFro = ([x, y]: Vec2, [dx, dy]: Vec2, from: number): readonly Mark[] => [-1, 1].flatMap((side) => {
  const at = (far: number): Vec2 => [x + side * dx * far, y + side * dy * far];
  return [line({ ...pens.motion, width: 0.9 }, at(Math.max(0, from - 4.6)), at(from)), arrowhead(at(from + 3.2), [side * dx, side * dy], 3.6, 2.4)];
});

/** A sign on a white ground. */
const onGround = (sign: (at: Vec2) => readonly Mark[], at: Vec2): readonly Mark[] => [circle(at, 3.8, null, 'white'), ...sign(at)];
