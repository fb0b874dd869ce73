import type { Vec2 } from '../../model/index.ts';
import { arrowhead, line, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** How far round it goes, in half turns to either side, how far it bulges, and how far it stands out beyond the tube, mm of paper. */
const ROUND = { share: 0.62, bulge: 2.6, out: 3.6 } as const;
const PARTS = 12;

/** Turned to and fro by hand: an arrow with two heads round a level tube at a place of its axis; half of the tube's thickness in mm of paper. */
export function turnedRound([x, y]: Vec2, half: number): readonly Mark[] {
  const round = Array.from({ length: PARTS + 1 }, (_, index): Vec2 => {
    const angle = (-ROUND.share + (2 * ROUND.share * index) / PARTS) * Math.PI;
    return [x + ROUND.bulge * Math.cos(angle), y + (half + ROUND.out) * Math.sin(angle)];
  });
  const head = (at: number, before: number): readonly Mark[] => {
    const [tip, from] = [round[at], round[before]];
    return tip === undefined || from === undefined ? [] : [arrowhead(tip, [tip[0] - from[0], tip[1] - from[1]], 3.6, 2.6)];
  };
  return [line({ ...pens.motion, width: 2.2, colour: 'white' }, ...round), line({ ...pens.motion, width: 0.9 }, ...round), ...head(PARTS, PARTS - 2), ...head(0, 2)];
}
