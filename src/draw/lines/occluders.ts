import { Reals, Wholes, flag, real, whole } from './arrays.ts';
import type { Grid } from './grid.ts';
import { coverTriangle, gridOver, sealGrid } from './grid.ts';
import { greatestFirst } from './nearestOrder.ts';
import type { Stage } from './stage.ts';
import type { Tolerances } from './tolerances.ts';

/** Numbers kept of each face that can hide a line. */
export const stride = 16;
/** Places within a face's numbers: three sides (a b c: a x + b y ≥ c inside), plane, least and greatest z. */
export const planeAt = 9;
export const leastZ = 13;
export const greatestZ = 14;

/** The triangles that face the eye, nearest first, sorted into the cells of a grid on the view plane. */
export interface Occluders {
  /** Triangle of the stage. */
  readonly triangles: Int32Array;
  readonly body: Int32Array;
  /** `stride` numbers a face. */
  readonly numbers: Float64Array;
  readonly grid: Grid;
}

/** Gathers the faces that hide what lies behind them. */
export function occludersOf(stage: Stage, tolerances: Tolerances): Occluders {
  const triangles = nearestFirst(stage);
  const numbers = new Float64Array(stride * triangles.length);
  const grid = gridOver(stage.points, triangles.length);
  for (let i = 0; i < triangles.length; i++) {
    const t = whole(triangles, i);
    for (let side = 0; side < 3; side++) writeSide(numbers, stride * i + 3 * side, stage, t, side, tolerances);
    for (let k = 0; k < 4; k++) numbers[stride * i + planeAt + k] = real(stage.planes, 4 * whole(stage.planeOf, t) + k);
    const a = 3 * whole(stage.triangles, 3 * t);
    const b = 3 * whole(stage.triangles, 3 * t + 1);
    const c = 3 * whole(stage.triangles, 3 * t + 2);
    const az = real(stage.points, a + 2);
    const bz = real(stage.points, b + 2);
    const cz = real(stage.points, c + 2);
    numbers[stride * i + leastZ] = Math.min(az, bz, cz);
    numbers[stride * i + greatestZ] = Math.max(az, bz, cz);
    coverTriangle(grid, i, stage.points, a, b, c);
  }
  return { triangles, body: triangles.map((t) => whole(stage.bodyOf, t)), numbers, grid: sealGrid(grid) };
}

/** Triangles seen, by their nearest point; those without any area on the view plane hide nothing. */
function nearestFirst({ front, triangles, points, diagonal }: Stage): Int32Array {
  const [found, nearest] = [new Wholes(), new Reals()];
  for (let t = 0; t < front.length; t++) {
    if (flag(front, t) === 0) continue;
    const a = 3 * whole(triangles, 3 * t);
    const b = 3 * whole(triangles, 3 * t + 1);
    const c = 3 * whole(triangles, 3 * t + 2);
    if (!(doubleArea(points, a, b, c) > 1e-18 * diagonal * diagonal)) continue;
    found.push(t);
    nearest.push(Math.max(real(points, a + 2), real(points, b + 2), real(points, c + 2)));
  }
  return greatestFirst(nearest.done()).map((place) => whole(found.values, place));
}

function doubleArea(p: Float64Array, a: number, b: number, c: number): number {
  return (real(p, b) - real(p, a)) * (real(p, c + 1) - real(p, a + 1)) - (real(p, b + 1) - real(p, a + 1)) * (real(p, c) - real(p, a));
}

function writeSide(numbers: Float64Array, at: number, stage: Stage, t: number, side: number, tolerances: Tolerances): void {
  const from = 3 * whole(stage.triangles, 3 * t + side);
  const to = 3 * whole(stage.triangles, 3 * t + ((side + 1) % 3));
  const x = real(stage.points, from);
  const y = real(stage.points, from + 1);
  const dx = real(stage.points, to) - x;
  const dy = real(stage.points, to + 1) - y;
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  const beyond = whole(stage.neighbours, 3 * t + side);
  const inner = beyond >= 0 && flag(stage.front, beyond) === 1;
  numbers[at] = -dy / length;
  numbers[at + 1] = dx / length;
  numbers[at + 2] = (-dy * x + dx * y) / length + (inner ? -tolerances.innerGrowth : tolerances.contourInset);
}
