import { add, type Assembly } from './assembly.ts';
import { looseAt, type Loose } from './errors.ts';
import { factor, freeMotions, solveFactored } from './factor.ts';

/**
 * All displacements of the frame, or the freedom in which it gives way. `worked` tells whether the loads drive that
 * motion; where they do not, the frame is in balance but may stand here or there.
 */
export type Answer =
  | { readonly stands: true; readonly shifts: Float64Array }
  | { readonly stands: false; readonly loose: Loose; readonly worked: boolean };

/** Motions smaller than this beside the greatest are rounding. */
const ROUNDING = 1e-7;

/**
 * Solves the frame with each cable as a spring of the given share of its stiffness. A spin that moves no node
 * and that no load turns (a bar pinned at both ends, round itself) stays at 0; any other free motion gives way.
 */
export function shiftsOf(assembly: Assembly, shares: readonly number[]): Answer {
  const { size, held } = assembly;
  const free = Array.from({ length: size }, (_, i) => i).filter((index) => !held.has(index));
  const factored = factor(free.length, freePart(withSprings(assembly, shares), size, free));
  const toAll = (part: Float64Array): Float64Array => {
    const all = new Float64Array(size);
    free.forEach((index, i) => { all[index] = part[i] ?? 0; });
    return all;
  };
  const found = freeMotions(factored).map(toAll).flatMap((motion) => looseIn(assembly, motion));
  const worst = found.find(({ worked }) => worked) ?? found[0];
  if (worst) return { stands: false, ...worst };
  const loads = Float64Array.from(free, (index) => assembly.loads[index] ?? 0);
  return { stands: true, shifts: toAll(solveFactored(factored, loads)) };
}

function freePart(whole: Float64Array, size: number, free: readonly number[]): Float64Array {
  const grid = new Float64Array(free.length ** 2);
  let place = 0;
  for (const row of free) {
    for (const column of free) {
      grid[place] = whole[row * size + column] ?? 0;
      place += 1;
    }
  }
  return grid;
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

/** Where a free motion shows most; nothing where it is an idle spin. */
function looseIn(assembly: Assembly, motion: Float64Array): readonly { readonly loose: Loose; readonly worked: boolean }[] {
  const { frame, extent } = assembly;
  const shifted = greatest(motion, [0, 1, 2]);
  const turned = greatest(motion, [3, 4, 5]);
  const [shift, turn] = [Math.abs(motion[shifted] ?? 0), Math.abs(motion[turned] ?? 0) * extent];
  const worked = Math.abs(workOf(assembly, motion)) > ROUNDING * greatestLoad(assembly) * Math.max(shift, turn);
  if (shift > ROUNDING * turn) return [{ loose: looseAt(frame.nodes, shifted), worked }];
  return worked ? [{ loose: looseAt(frame.nodes, turned), worked }] : [];
}

const workOf = ({ loads }: Assembly, motion: Float64Array): number =>
  loads.reduce((sum, load, index) => sum + load * (motion[index] ?? 0), 0);

/** The greatest load, N; moments over the frame's extent. */
export const greatestLoad = ({ loads, extent }: Assembly): number =>
  loads.reduce((most, load, index) => Math.max(most, Math.abs(load) / (index % 6 < 3 ? 1 : extent)), 0);

/** Index of the greatest value among the freedoms wanted of each node, told by their places in it; the first of equal ones. */
function greatest(motion: Float64Array, wanted: readonly [number, number, number]): number {
  let best = wanted[0];
  for (let node = 0; node < motion.length; node += 6) {
    for (const place of wanted) {
      if (Math.abs(motion[node + place] ?? 0) > Math.abs(motion[best] ?? 0) * (1 + 1e-9)) best = node + place;
    }
  }
  return best;
}
