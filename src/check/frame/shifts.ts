import { add, type Assembly } from './assembly.ts';
import { looseAt, type Loose } from './errors.ts';
import { factor, freeMotions, solveFactored } from './factor.ts';

/** All displacements of the frame, or the freedom in which it gives way. */
export type Answer =
  | { readonly stands: true; readonly shifts: Float64Array }
  | { readonly stands: false; readonly loose: Loose };

/**
 * Solves the frame with each cable as a spring of the given share of its stiffness. A spin that moves no node
 * and that no load turns (a bar pinned at both ends, round itself) stays at 0; any other free motion is a mechanism.
 */
export function shiftsOf(assembly: Assembly, shares: readonly number[]): Answer {
  const { size, held } = assembly;
  const free = Array.from({ length: size }, (_, i) => i).filter((index) => !held.has(index));
  const whole = withSprings(assembly, shares);
  const grid = new Float64Array(free.length ** 2);
  free.forEach((row, i) => { free.forEach((column, j) => { grid[i * free.length + j] = whole[row * size + column] ?? 0; }); });
  const factored = factor(free.length, grid);
  const loads = Float64Array.from(free, (index) => assembly.loads[index] ?? 0);
  const toAll = (part: Float64Array): Float64Array => {
    const all = new Float64Array(size);
    free.forEach((index, i) => { all[index] = part[i] ?? 0; });
    return all;
  };
  const loose = freeMotions(factored).map(toAll).map((motion) => looseIn(assembly, motion)).find((found) => found !== null);
  return loose ? { stands: false, loose } : { stands: true, shifts: toAll(solveFactored(factored, loads)) };
}

function withSprings({ stiffness, springs, size }: Assembly, shares: readonly number[]): Float64Array {
  const grid = Float64Array.from(stiffness);
  springs.forEach((spring, index) => {
    const k = spring.stiffness * (shares[index] ?? 0);
    if (k === 0) return;
    spring.places.forEach((row, i) => { spring.places.forEach((column, j) => {
      add(grid, row * size + column, k * (spring.along[i] ?? 0) * (spring.along[j] ?? 0));
    }); });
  });
  return grid;
}

/** Where a free motion shows most, or null where it is an idle spin. */
function looseIn({ frame, extent, loads }: Assembly, motion: Float64Array): Loose | null {
  const shifted = greatest(motion, [0, 1, 2]);
  const turned = greatest(motion, [3, 4, 5]);
  const [shift, turn] = [Math.abs(motion[shifted] ?? 0), Math.abs(motion[turned] ?? 0) * extent];
  if (shift > 1e-6 * turn) return looseAt(frame.nodes, shifted);
  return isWorked(loads, motion) ? looseAt(frame.nodes, turned) : null;
}

function isWorked(loads: Float64Array, motion: Float64Array): boolean {
  const works = loads.map((load, index) => load * (motion[index] ?? 0));
  const sum = works.reduce((total, work) => total + work, 0);
  return Math.abs(sum) > 1e-9 * works.reduce((total, work) => total + Math.abs(work), 0);
}

/** Index of the greatest value among the freedoms wanted of each node; the first of equal ones. */
function greatest(motion: Float64Array, wanted: readonly number[]): number {
  const indices = Array.from(motion, (_, index) => index).filter((index) => wanted.includes(index % 6));
  const size = (index: number): number => Math.abs(motion[index] ?? 0);
  return indices.reduce((best, index) => (size(index) > size(best) * (1 + 1e-9) ? index : best), indices[0] ?? 0);
}
