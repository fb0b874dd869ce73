import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';

/** How a plane (mm, x to the right, y up) lies on paper (mm, y down). */
export interface Fit {
  /** mm of paper to 1 mm. */
  readonly scale: number;
  /** Where the plane's origin lies on the paper. */
  readonly origin: Vec2;
}

/** Least and greatest x and y on the plane, mm. */
export interface Bounds {
  readonly min: Vec2;
  readonly max: Vec2;
}

/** Where in the free room a drawing stands: 0 left or top, ½ middle, 1 right or bottom. */
export type Align = Vec2;

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

/** The bounds in the middle of a box on the paper, as large as the series of scales allows. */
export function fitToScale(extent: Bounds, box: Box, enlarge = false): Fit {
  const size: Vec2 = [extent.max[0] - extent.min[0], extent.max[1] - extent.min[1]];
  const scale = fittingScale(size, [box.width, box.height], enlarge);
  const middle: Vec2 = [(extent.min[0] + extent.max[0]) / 2, (extent.min[1] + extent.max[1]) / 2];
  return { scale, origin: [box.x + box.width / 2 - middle[0] * scale, box.y + box.height / 2 + middle[1] * scale] };
}

/** The paper place of a point of the plane. */
export function onPaper(view: Fit, [x, y]: Vec2): Vec2 {
  return [view.origin[0] + x * view.scale, view.origin[1] - y * view.scale];
}

/** The paper places of points of the plane. */
export function allOnPaper(view: Fit, points: readonly Vec2[]): readonly Vec2[] {
  return points.map((point) => onPaper(view, point));
}

/** The paper box of bounds on the plane. */
export function boxOnPaper(view: Fit, { min, max }: Bounds): Box {
  const [x, y] = onPaper(view, [min[0], max[1]]);
  return { x, y, width: (max[0] - min[0]) * view.scale, height: (max[1] - min[1]) * view.scale };
}

/** The largest fit of the bounds into the room, times `shrink`, at one scale in x and y. */
export function fitInto(bounds: Bounds, room: Box, shrink: number, align: Align): Fit {
  const width = Math.max(bounds.max[0] - bounds.min[0], 1e-6);
  const height = Math.max(bounds.max[1] - bounds.min[1], 1e-6);
  const scale = shrink * Math.min(room.width / width, room.height / height);
  const x = room.x + align[0] * (room.width - scale * width);
  const y = room.y + align[1] * (room.height - scale * height);
  return { scale, origin: [x - scale * bounds.min[0], y + scale * bounds.max[1]] };
}

export function boundsOf(points: readonly Vec2[]): Bounds {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    low = Math.min(low, y);
    right = Math.max(right, x);
    high = Math.max(high, y);
  }
  return { min: [left, low], max: [right, high] };
}
