import type { NumberedCut, PanelSheet } from '../../../cut/index.ts';
import type { Vec2 } from '../../../model/index.ts';
import { orderRadius } from '../../kit/marks.ts';
import { onPaper, type Fit } from '../../kit/fit.ts';
import { tell } from '../../../scene/index.ts';

const EDGE = 0.25;
/** Places along a cut that are tried for its numeral, as shares of its length. */
const TRIED = [0.5, 0.42, 0.58, 0.35, 0.65, 0.27, 0.73, 0.2, 0.8, 0.12, 0.88, 0.06, 0.94];

interface Style {
  readonly pastEdge: number;
  readonly cap: number;
}

/**
 * Where the numeral of each cut stands: beyond the panel's upper or right edge where the cut runs out there, else on
 * the cut itself, clear of letters and of the numerals before. mm of paper.
 */
export function orderPlaces(cuts: readonly NumberedCut[], sheet: PanelSheet, view: Fit, { pastEdge, cap }: Style): readonly { readonly cut: NumberedCut; readonly at: Vec2 }[] {
  const taken: { readonly at: Vec2; readonly radius: number }[] = sheet.pieces.map(({ x, y, width, height }) =>
    ({ at: onPaper(view, [x + width / 2, y + height / 2]), radius: 2.2 }));
  return cuts.map((cut) => {
    const radius = orderRadius(tell.number(cut.number), cap);
    const places = [...beyond(cut, sheet, view, pastEdge + radius), ...TRIED.map((share) => along(cut, view, share))];
    const room = (at: Vec2): number => Math.min(Infinity, ...taken.map((each) => Math.hypot(each.at[0] - at[0], each.at[1] - at[1]) - each.radius - radius));
    const free = places.find((at) => room(at) > 0.2);
    const at = free ?? places.reduce((best, each) => (room(each) > room(best) ? each : best));
    taken.push({ at, radius });
    return { cut, at };
  });
}

function beyond({ axis, at, to }: NumberedCut, { length, width }: PanelSheet, view: Fit, away: number): readonly Vec2[] {
  if (axis === 'x' && to > width - EDGE) {
    const [x, y] = onPaper(view, [at, width]);
    return [[x, y - away]];
  }
  if (axis === 'y' && to > length - EDGE) {
    const [x, y] = onPaper(view, [length, at]);
    return [[x + away, y]];
  }
  return [];
}

const along = ({ axis, at, from, to }: NumberedCut, view: Fit, share: number): Vec2 =>
  onPaper(view, axis === 'x' ? [at, from + (to - from) * share] : [from + (to - from) * share, at]);
