import type { Vec2 } from '../../model/index.ts';
import { labelBoxes, type Mark } from '../kit/marks.ts';
import type { Paper } from '../kit/svg.ts';

/** From where to where marks reach across their paper, mm; none where there are none. */
export interface Across {
  readonly from: number;
  readonly to: number;
}

/** White left beside what is drawn, mm. */
const BESIDE = 2;
/** Less than this share of the width is not worth being cut off. */
const WORTH = 0.06;

/** How much of a paper's width its marks take, white grounds left out, with a little white on either side; all of it where hardly any is free. */
export function inkAcross(marks: readonly Mark[], { width }: Paper): Across {
  const reached = marks.flatMap((mark) => reachOf(mark, width));
  if (reached.length === 0) return { from: 0, to: width };
  const from = Math.max(0, Math.min(...reached.map((each) => each.from)) - BESIDE);
  const to = Math.min(width, Math.max(...reached.map((each) => each.to)) + BESIDE);
  return to - from > (1 - WORTH) * width ? { from: 0, to: width } : { from, to };
}

function reachOf(mark: Mark, width: number): readonly Across[] {
  switch (mark.mark) {
    case 'line': return round(mark.points, mark.pen.width / 2);
    case 'lines': return mark.runs.flatMap(({ points }) => round(points, mark.pen.width / 2));
    case 'area': return mark.rings.flatMap((ring) => round(ring, 0)).filter(({ from, to }) => mark.fill !== 'white' || to - from < width - BESIDE);
    case 'circle': return [{ from: mark.centre[0] - mark.radius, to: mark.centre[0] + mark.radius }];
    case 'figure': case 'order': case 'fraction': return labelBoxes([mark]).map(({ x, width: wide }) => ({ from: x, to: x + wide }));
    case 'view': return mark.marks.flatMap((each) => reachOf(each, width));
    case 'placed': return mark.marks.flatMap((each) => reachOf(each, width)).map(({ from, to }) => ({ from: from + mark.at[0], to: to + mark.at[0] }));
  }
}

function round(points: readonly Vec2[], half: number): readonly Across[] {
  if (points.length === 0) return [];
  const xs = points.map(([x]) => x);
  return [{ from: Math.min(...xs) - half, to: Math.max(...xs) + half }];
}
