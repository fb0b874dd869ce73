import { item, real, whole } from './arrays.ts';
import { turnPlanes, turnPoints } from './stage.ts';
import { leastFacing } from './tolerances.ts';
import type { Topology } from './topology.ts';

/** An edge of the faces seen, upwards, and how many faces it adds on its right: +1 or −1. */
interface Side {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly step: number;
}

const bands = 200;

/**
 * Area in mm² of what a body alone covers on the view plane. The contour edges are walked in level
 * bands that end at every corner; within a band the width is straight but where contours cross, so
 * the area is exact for bodies without such crossings and good to about 1e-4 of it otherwise.
 * @param matrix the body's turn into the view, column by column.
 */
export function outlineArea(topology: Topology, matrix: readonly number[]): number {
  const sides = contourSides(topology, matrix).sort((p, q) => p.y0 - q.y0 || p.x0 - q.x0);
  const levels = levelsOf(sides);
  let area = 0;
  let open: Side[] = [];
  let next = 0;
  for (let k = 1; k < levels.length; k++) {
    const middle = (item(levels, k) + item(levels, k - 1)) / 2;
    for (; next < sides.length && item(sides, next).y0 < middle; next++) open.push(item(sides, next));
    if (open.some((side) => side.y1 <= middle)) open = open.filter((side) => side.y1 > middle);
    area += coveredWidth(open, middle) * (item(levels, k) - item(levels, k - 1));
  }
  return area;
}

function contourSides(topology: Topology, matrix: readonly number[]): Side[] {
  const points = new Float64Array(topology.points.length);
  const planes = new Float64Array(topology.planes.length);
  turnPoints(topology.points, matrix, points, 0);
  turnPlanes(topology.planes, matrix, planes, 0);
  const isSeen = (t: number): boolean => t >= 0 && real(planes, 4 * whole(topology.planeOf, t) + 2) > leastFacing;
  const sides: Side[] = [];
  for (let e = 0; e < topology.edges.length; e += 4) {
    const [left, right] = [isSeen(whole(topology.edges, e + 2)), isSeen(whole(topology.edges, e + 3))];
    if (left === right) continue;
    const [a, b] = [3 * whole(topology.edges, e), 3 * whole(topology.edges, e + 1)];
    const [x0, y0, x1, y1] = [real(points, a), real(points, a + 1), real(points, b), real(points, b + 1)];
    const step = left ? -1 : 1;
    if (y0 < y1) sides.push({ x0, y0, x1, y1, step });
    else if (y1 < y0) sides.push({ x0: x1, y0: y1, x1: x0, y1: y0, step: -step });
  }
  return sides;
}

/** Heights between which the area is measured: every corner, and even bands where corners are rare. */
function levelsOf(sides: readonly Side[]): readonly number[] {
  const corners = sides.flatMap(({ y0, y1 }) => [y0, y1]);
  const [low, high] = corners.reduce(([a, b], y) => [Math.min(a, y), Math.max(b, y)], [Infinity, -Infinity]);
  const even = sides.length === 0 ? [] : Array.from({ length: bands }, (_, k) => low + ((high - low) * k) / bands);
  return Array.from(Float64Array.from([...corners, ...even]).sort());
}

/** Width covered at a height: where at least one face seen lies over the paper. */
function coveredWidth(sides: readonly Side[], y: number): number {
  const places = new Float64Array(sides.length);
  const steps = new Int32Array(sides.length);
  sides.forEach(({ x0, y0, x1, y1, step }, k) => {
    const x = x0 + ((y - y0) / (y1 - y0)) * (x1 - x0);
    // Few sides cross one height, so each is put in its place.
    let place = k;
    for (; place > 0 && real(places, place - 1) > x; place--) {
      places[place] = real(places, place - 1);
      steps[place] = whole(steps, place - 1);
    }
    places[place] = x;
    steps[place] = step;
  });
  let [layers, width] = [0, 0];
  for (let k = 0; k < sides.length; k++) {
    if (layers > 0) width += real(places, k) - real(places, k - 1);
    layers += whole(steps, k);
  }
  return width;
}
