import type { Vec2 } from '../../model/index.ts';
import { item } from './arrays.ts';

/**
 * One line or ring as SVG path data (W3C SVG 2, chapter 9): an absolute start, then steps between
 * points rounded beforehand, so that roundings do not add up.
 * @param digits decimals of a coordinate, in the units of the points.
 */
export function strokesToPath(points: readonly Vec2[], closed: boolean, digits: number): string {
  const scale = 10 ** digits;
  const steps = points.map(([x, y]) => [Math.round(x * scale), Math.round(y * scale)] as const);
  const write = (whole: number): string => String(whole / scale === 0 ? 0 : whole / scale);
  const moves = steps.map(([x, y], p) => {
    if (p === 0) return `M${write(x)} ${write(y)}`;
    const [lastX, lastY] = item(steps, p - 1);
    return `${p === 1 ? 'l' : ' '}${write(x - lastX)} ${write(y - lastY)}`;
  });
  return moves.join('') + (closed ? 'z' : '');
}
