import { clipRings, clipRun, isInside, type Window } from './clip.ts';
import { outline, line, type Mark } from './marks.ts';

/** The marks as far as they lie inside a convex window. Figures and order numerals are left out: place them afterwards. */
export function clipMarks(marks: readonly Mark[], window: Window): readonly Mark[] {
  return marks.flatMap((mark): readonly Mark[] => {
    switch (mark.mark) {
      case 'line':
        return clipRun(mark, window).map(({ points, closed }) => (closed ? outline(mark.pen, points) : line(mark.pen, ...points)));
      case 'area': {
        const rings = clipRings(mark.rings, window);
        return rings.length > 0 ? [{ ...mark, rings }] : [];
      }
      case 'circle':
        return isInside(mark.centre, window) ? [mark] : [];
      case 'view':
        return [{ ...mark, marks: clipMarks(mark.marks, window) }];
      default:
        return [];
    }
  });
}
