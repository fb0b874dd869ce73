import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';

/** A view to scale: model mm (x right, y up) to paper mm (x right, y down). */
export interface View {
  readonly scale: number;
  /** Where the model's origin lies on the paper. */
  readonly origin: Vec2;
}

/** A rectangle in the model, mm, y upwards. */
export interface Extent {
  readonly least: Vec2;
  readonly most: Vec2;
}

/** Scales are one in one of these, so that a rule laid on the picture can be read without a calculator. */
const steps = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 18, 20, 22, 25, 30, 35, 40, 45, 50, 60, 75, 100];

/** Scales above one: for sections of the panel. */
const enlargements = [10, 8, 6, 5, 4, 3, 2.5, 2, 1.5];

/** The largest scale of the series at which `width × height` (mm) fits into `room` (mm of paper). */
export function fittingScale(size: Vec2, room: Vec2, enlarge = false): number {
  const series = [...(enlarge ? enlargements : []), ...steps.map((step) => 1 / step)];
  const found = series.find((scale) => size[0] * scale <= room[0] + 1e-9 && size[1] * scale <= room[1] + 1e-9);
  if (found === undefined) {
    throw new RangeError(`A drawing of ${size[0].toFixed(1)} × ${size[1].toFixed(1)} mm does not fit into ${room[0].toFixed(1)} × ${room[1].toFixed(1)} mm of paper at 1 : 100; give it larger paper.`);
  }
  return found;
}

/** A view of an extent in the middle of a box on the paper, as large as the series of scales allows. */
export function fitView(extent: Extent, box: Box, enlarge = false): View {
  const size: Vec2 = [extent.most[0] - extent.least[0], extent.most[1] - extent.least[1]];
  const scale = fittingScale(size, [box.width, box.height], enlarge);
  const middle: Vec2 = [(extent.least[0] + extent.most[0]) / 2, (extent.least[1] + extent.most[1]) / 2];
  return { scale, origin: [box.x + box.width / 2 - middle[0] * scale, box.y + box.height / 2 + middle[1] * scale] };
}

/** The paper place of a model point. */
export function onPaper(view: View, [x, y]: Vec2): Vec2 {
  return [view.origin[0] + x * view.scale, view.origin[1] - y * view.scale];
}

/** The paper places of model points. */
export function allOnPaper(view: View, points: readonly Vec2[]): readonly Vec2[] {
  return points.map((point) => onPaper(view, point));
}

/** The paper box of a model extent. */
export function boxOnPaper(view: View, { least, most }: Extent): Box {
  const [x, y] = onPaper(view, [least[0], most[1]]);
  return { x, y, width: (most[0] - least[0]) * view.scale, height: (most[1] - least[1]) * view.scale };
}
