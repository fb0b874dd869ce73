import { plus, type Vec2 } from '../../model/index.ts';
import type { Mark } from '../../scene/index.ts';
import { HAND_HALF, HAND_HIGH, handOnto } from '../flat/hands.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import type { Mark as DrawnMark } from '../kit/marks.ts';
import type { Box } from '../types.ts';
import { project, type Plane } from './plane.ts';
import type { Disc } from './rings.ts';

/** A hand's breadth, mm (common practice, no source); hands are drawn as large as the work, but no smaller and no larger than so many times as large as where a hand is the matter of a picture. */
const BREADTH = 90;
const SIZE = { least: 0.5, most: 0.7 } as const;

/** A hand on paper: where it holds the work, and which way its fingers reach there. */
export interface HandOnPaper {
  readonly at: Vec2;
  readonly onto: Vec2;
  readonly person: 1 | 2;
  /** Against its own. */
  readonly size: number;
}

/** Where hands hold the work, on paper; fingers that reach straight away from the eye reach downwards. */
export const handsOnPaper = (marks: readonly Mark[], plane: Plane, fit: Fit): readonly HandOnPaper[] => marks.flatMap((mark) => {
  if (mark.mark !== 'hand') return [];
  const [at, on] = [mark.at, plus(mark.at, mark.onto)].map((place) => onPaper(fit, project(plane, place))) as [Vec2, Vec2];
  const far = Math.hypot(on[0] - at[0], on[1] - at[1]);
  const size = Math.min(SIZE.most, Math.max(SIZE.least, (BREADTH * fit.scale) / (2 * HAND_HALF)));
  return [{ at, size, person: mark.person, onto: far < 1e-6 ? [0, 1] : [(on[0] - at[0]) / far, (on[1] - at[1]) / far] }];
});

export const handMarks = ({ at, onto, size, person }: HandOnPaper): readonly DrawnMark[] => handOnto(at, onto, size, person);

/** The room of a hand, as a box and as a disc. */
export function handBox({ at: [x, y], onto: [dx, dy], size }: HandOnPaper): Box {
  const [half, back, over] = [HAND_HALF * size, HAND_HIGH * size, (HAND_HALF * size) / 2];
  const sides = (at: number, way: number, across: number): readonly [number, number] =>
    [Math.min(at - back * way, at + over * way) - half * Math.abs(across), Math.max(at - back * way, at + over * way) + half * Math.abs(across)];
  const [[left, right], [top, bottom]] = [sides(x, dx, dy), sides(y, dy, dx)];
  return { x: left, y: top, width: right - left, height: bottom - top };
}
export const handDisc = ({ at: [x, y], onto: [dx, dy], size }: HandOnPaper): Disc => ({ centre: [x - (HAND_HIGH / 2) * size * dx, y - (HAND_HIGH / 2) * size * dy], radius: HAND_HALF * size });
