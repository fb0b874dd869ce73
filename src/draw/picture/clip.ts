import { clipRings, clipRun, type Window } from '../kit/clip.ts';
import type { LineDrawing } from '../types.ts';

/** What of a drawing lies in a window of the view plane. */
export function clipDrawing(drawing: LineDrawing, window: Window): LineDrawing {
  return {
    ...drawing,
    strokes: drawing.strokes.flatMap((stroke) => clipRun(stroke, window).map((run) => ({ ...stroke, ...run }))),
    regions: drawing.regions
      .map(({ body, rings }) => ({ body, rings: clipRings(rings, window) }))
      .filter(({ rings }) => rings.length > 0),
  };
}
