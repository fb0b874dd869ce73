import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';

/** How the view plane lies on paper: `scale` mm of paper to 1 mm, and where the plane's origin falls. */
export interface Fit {
  readonly scale: number;
  readonly origin: Vec2;
}

/** Least and greatest x and y on the view plane, in mm. */
export interface Bounds {
  readonly least: Vec2;
  readonly most: Vec2;
}

/** Where in the free room the drawing stands: 0 left or top, ½ middle, 1 right or bottom. */
export type Align = Vec2;

export function toPaper(fit: Fit, p: Vec2): Vec2 {
  return [fit.origin[0] + fit.scale * p[0], fit.origin[1] - fit.scale * p[1]];
}

/** The largest fit of the bounds into the room, times `shrink`, at one scale in x and y. */
export function fitInto(bounds: Bounds, room: Box, shrink: number, align: Align): Fit {
  const width = Math.max(bounds.most[0] - bounds.least[0], 1e-6);
  const height = Math.max(bounds.most[1] - bounds.least[1], 1e-6);
  const scale = shrink * Math.min(room.width / width, room.height / height);
  const x = room.x + align[0] * (room.width - scale * width);
  const y = room.y + align[1] * (room.height - scale * height);
  return { scale, origin: [x - scale * bounds.least[0], y + scale * bounds.most[1]] };
}

export function boundsOf(points: readonly Vec2[]): Bounds {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    low = Math.min(low, y);
    right = Math.max(right, x);
    high = Math.max(high, y);
  }
  return { least: [left, low], most: [right, high] };
}
