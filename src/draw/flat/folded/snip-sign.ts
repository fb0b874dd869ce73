import type { Pattern } from '../../../model/index.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, figure, line, toldWidth } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { tell } from '../../../scene/index.ts';
import type { Sign } from './sign.ts';

const size = 6;

/** The corner that is snipped off every tab, how long both of its legs are; nothing where no flap has a tab. */
export function snipSign({ flaps }: Pattern): Sign | undefined {
  const corners = [...new Set(flaps.map(({ corner }) => corner).filter((corner) => corner > 0))].sort((a, b) => a - b);
  if (corners.length === 0) return undefined;
  return (x, y) => corners.flatMap((corner, index) => {
    const told = tell.sides(corner, corner);
    const left = x + index * 40;
    return [
      area('panel', [[left, y], [left + size - 3, y], [left + size, y + 3], [left + size, y + size], [left, y + size]]),
      line(pens.edge, [left, y], [left + size - 3, y]),
      line(pens.cut, [left + size - 3, y], [left + size, y + 3]),
      line(pens.edge, [left + size, y + 3], [left + size, y + size]),
      figure(told, [left + size + 3 + toldWidth(told, capHeights.step, 400) / 2, y + 3.5], capHeights.step),
    ];
  });
}
