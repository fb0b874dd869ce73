import { Reals, Wholes, item, real, whole } from './arrays.ts';
import type { Grid } from './grid.ts';
import { coverConvex, gridOver, sealGrid } from './grid.ts';
import { greatestFirst } from './nearestOrder.ts';
import { facing } from './stage.ts';
import type { Stage } from './stage.ts';
import type { Tolerances } from './tolerances.ts';

/** Places within a face's numbers: its plane (nx ny nz d), its least and greatest z, then its sides, three numbers each. */
export const leastZ = 4;
export const greatestZ = 5;
export const firstSide = 6;

/** The convex faces that are turned to the eye, nearest first, sorted into the cells of a grid on the view plane. */
export interface Occluders {
  /** Where each face's numbers begin; one more entry than faces. */
  readonly starts: Int32Array;
  readonly numbers: Float64Array;
  readonly body: Int32Array;
  readonly grid: Grid;
}

/** Faces by their body and their place in its mesh. */
interface Faces {
  readonly body: Int32Array;
  readonly face: Int32Array;
}

/** Gathers the faces that hide what lies behind them. A side's numbers a b c: a x + b y ≥ c inside. */
export function occludersOf(stage: Stage, tolerances: Tolerances): Occluders {
  const { body, face } = nearestFirst(stage);
  const starts = new Int32Array(face.length + 1);
  const numbers = new Reals();
  const grid = gridOver(stage.points, face.length);
  const corners = new Wholes();
  for (let i = 0; i < face.length; i++) {
    writeFace(numbers, corners, stage, whole(body, i), whole(face, i), tolerances);
    starts[i + 1] = numbers.count;
    coverConvex(grid, i, stage.points, corners);
  }
  return { starts, numbers: numbers.values, body, grid: sealGrid(grid) };
}

/** Faces seen, by their nearest point; those without any area on the view plane hide nothing. */
function nearestFirst(stage: Stage): Faces {
  const [bodies, faces, nearest] = [new Wholes(), new Wholes(), new Reals()];
  stage.topologies.forEach(({ faceStarts }, b) => {
    for (let f = 0; f < faceStarts.length - 1; f++) {
      const z = nearestOf(stage, b, f);
      if (z === -Infinity) continue;
      bodies.push(b);
      faces.push(f);
      nearest.push(z);
    }
  });
  const order = greatestFirst(nearest.done());
  return { body: order.map((place) => whole(bodies.values, place)), face: order.map((place) => whole(faces.values, place)) };
}

/** Greatest height of a face towards the eye; −∞ where it is turned away or seen from its edge. */
function nearestOf(stage: Stage, b: number, f: number): number {
  const { faceStarts, faceSides, triangles } = item(stage.topologies, b);
  const first = whole(faceSides, whole(faceStarts, f));
  if (facing(stage, b, Math.floor(first / 3)) === 0) return -Infinity;
  const { points } = stage;
  const point = whole(stage.firstPoint, b);
  const a = 3 * (point + whole(triangles, first));
  let nearest = real(points, a + 2);
  let doubleArea = 0;
  let [ux, uy] = [0, 0];
  for (let s = whole(faceStarts, f) + 1; s < whole(faceStarts, f + 1); s++) {
    const p = 3 * (point + whole(triangles, whole(faceSides, s)));
    const vx = real(points, p) - real(points, a);
    const vy = real(points, p + 1) - real(points, a + 1);
    doubleArea += ux * vy - uy * vx;
    nearest = Math.max(nearest, real(points, p + 2));
    ux = vx;
    uy = vy;
  }
  return doubleArea > 1e-18 * stage.diagonal * stage.diagonal ? nearest : -Infinity;
}

/** Adds a face's numbers, and leaves its corners (places in the stage's points) in `corners`. */
function writeFace(numbers: Reals, corners: Wholes, stage: Stage, b: number, f: number, tolerances: Tolerances): void {
  const { faceStarts, faceSides, triangles, neighbours, planeOf } = item(stage.topologies, b);
  const { points } = stage;
  const point = whole(stage.firstPoint, b);
  const [from, to] = [whole(faceStarts, f), whole(faceStarts, f + 1)];
  const plane = 4 * (whole(stage.firstPlane, b) + whole(planeOf, Math.floor(whole(faceSides, from) / 3)));
  corners.count = 0;
  let [least, greatest] = [Infinity, -Infinity];
  for (let s = from; s < to; s++) {
    const corner = 3 * (point + whole(triangles, whole(faceSides, s)));
    corners.push(corner);
    least = Math.min(least, real(points, corner + 2));
    greatest = Math.max(greatest, real(points, corner + 2));
  }
  for (let k = plane; k < plane + 4; k++) numbers.push(real(stage.planes, k));
  numbers.push(least);
  numbers.push(greatest);
  for (let s = 0; s < corners.count; s++) {
    const next = s + 1 === corners.count ? 0 : s + 1;
    const isInner = facing(stage, b, whole(neighbours, whole(faceSides, from + s))) === 1;
    writeSide(numbers, points, whole(corners.values, s), whole(corners.values, next), isInner ? -tolerances.innerGrowth : tolerances.contourInset);
  }
}

function writeSide(numbers: Reals, points: Float64Array, from: number, to: number, inset: number): void {
  const x = real(points, from);
  const y = real(points, from + 1);
  const dx = real(points, to) - x;
  const dy = real(points, to + 1) - y;
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  numbers.push(-dy / length);
  numbers.push(dx / length);
  numbers.push((-dy * x + dx * y) / length + inset);
}
