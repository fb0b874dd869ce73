import type { Vec2 } from '../../../model/index.ts';
import type { Mark } from '../../kit/marks.ts';
import type { Frame } from './knots.ts';

/** A frame drawn so many times as large; figures and numerals stay as high as they are. */
export const enlarged = (frame: Frame, by: number): Frame => ([x, y]) => {
  const on = ([u, v]: Vec2): Vec2 => [x + by * u, y + by * v];
  return frame([0, 0]).map((mark): Mark => {
    switch (mark.mark) {
      case 'line': return { ...mark, pen: { ...mark.pen, width: by * mark.pen.width }, points: mark.points.map(on) };
      case 'area': return { ...mark, rings: mark.rings.map((ring) => ring.map(on)) };
      case 'circle': return { ...mark, centre: on(mark.centre), radius: by * mark.radius, pen: mark.pen === null ? null : { ...mark.pen, width: by * mark.pen.width } };
      case 'figure':
      case 'order':
      case 'fraction': return { ...mark, centre: on(mark.centre) };
      case 'lines':
      case 'view':
      case 'placed': throw new RangeError(`a frame has no ${mark.mark}`);
    }
  });
};
