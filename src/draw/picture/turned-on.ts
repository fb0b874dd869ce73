import type { Vec2 } from '../../model/index.ts';
import type { Mark } from '../../scene/index.ts';
import { apart, minus } from '../kit/geometry.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import { arrowhead, line, type Mark as DrawnMark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { project, type Plane } from './plane.ts';
import type { Disc } from './rings.ts';

/** The way round of what is turned on by hand: its line as wide as that of what is turned to and fro, and its head, mm of paper. */
const ROUND = { wide: 0.9, head: [3.4, 2.8] } as const;

/** Ways round on paper, each with its head at the last place. */
export const turnsOnPaper = (marks: readonly Mark[], plane: Plane, fit: Fit): readonly (readonly Vec2[])[] => marks.flatMap((mark) =>
  (mark.mark === 'turned-on' ? [mark.path.map((place) => onPaper(fit, project(plane, place)))] : []));

export function turnMarks(path: readonly Vec2[]): readonly DrawnMark[] {
  const [long, wide] = ROUND.head;
  const tip = path.at(-1);
  const back = tip === undefined ? undefined : path.findLast((place) => apart(place, tip) >= long * 0.6);
  if (tip === undefined || back === undefined) return [];
  const shaft = path.slice(0, path.indexOf(back) + 1);
  return [line({ ...pens.motion, width: ROUND.wide }, ...shaft), arrowhead(tip, minus(tip, back), long, wide)];
}

/** The room of a way round. */
export function turnDisc(path: readonly Vec2[]): Disc {
  const centre: Vec2 = [0, 1].map((axis) => path.reduce((sum, place) => sum + (place[axis] ?? 0), 0) / path.length) as [number, number];
  return { centre, radius: Math.max(...path.map((place) => apart(centre, place))) + ROUND.wide };
}
