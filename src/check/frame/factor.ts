/**
 * A symmetric grid K (row by row, size × size), scaled to unit diagonal and split as L Lᵀ with the greatest
 * remaining diagonal taken first (Cholesky with full pivoting). `rank` is where the rest is nought:
 * the freedoms from there on in `order` meet no resistance.
 */
export interface Factored {
  readonly size: number;
  readonly rank: number;
  readonly order: Int32Array;
  readonly lower: Float64Array;
  readonly scale: Float64Array;
}

/** A pivot this small beside 1 is taken for nought: far over rounding (1e-15), far under any real softness. */
const NOUGHT = 1e-12;

/** A freedom this soft beside the stiffest has only the rounding of a bar that lies a hair askew; scaled up, that would lock it. */
const ROUNDING = 1e-14;

export function factor(size: number, stiffness: Float64Array): Factored {
  const scale = scaleOf(size, stiffness);
  const lower = scaled(size, stiffness, scale);
  const order = Int32Array.from({ length: size }, (_, i) => i);
  for (let step = 0; step < size; step += 1) {
    bringGreatestForward(lower, order, step, size);
    const pivot = at(lower, at(order, step) * (size + 1));
    if (pivot < NOUGHT) return { size, rank: step, order, lower, scale };
    eliminate(lower, order, step, size);
  }
  return { size, rank: size, order, lower, scale };
}

function scaled(size: number, stiffness: Float64Array, scale: Float64Array): Float64Array {
  const grid = new Float64Array(size * size);
  for (let row = 0, place = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1, place += 1) grid[place] = at(stiffness, place) * at(scale, row) * at(scale, column);
  }
  return grid;
}

/** To unit diagonal; a freedom that is rounding only is left as it is. */
function scaleOf(size: number, stiffness: Float64Array): Float64Array {
  const own = Float64Array.from({ length: size }, (_, i) => at(stiffness, i * size + i));
  const least = ROUNDING * own.reduce((most, value) => Math.max(most, value), 0);
  return own.map((value) => (value > least ? 1 / Math.sqrt(value) : 1));
}

/** Displacements under loads; freedoms without resistance stay at 0. */
export function solveFactored(factored: Factored, loads: Float64Array): Float64Array {
  const { size, rank, order, lower, scale } = factored;
  const part = new Float64Array(size);
  for (let step = 0; step < rank; step += 1) {
    const row = at(order, step);
    let rest = at(loads, row) * at(scale, row);
    for (let before = 0; before < step; before += 1) rest -= at(lower, row * size + at(order, before)) * at(part, before);
    part[step] = rest / at(lower, row * (size + 1));
  }
  return backwards(factored, part);
}

/** One motion for each freedom that meets no resistance; together they span all such motions. */
export function freeMotions(factored: Factored): readonly Float64Array[] {
  const { size, rank, order, lower, scale } = factored;
  return Array.from(order.slice(rank), (loose) => {
    const part = new Float64Array(size);
    for (let step = 0; step < rank; step += 1) part[step] = -at(lower, loose * size + at(order, step));
    const motion = backwards(factored, part);
    motion[loose] = at(scale, loose);
    return motion;
  });
}

/** Solves Lᵀ x = part and takes the scaling out. Free motions leave most of a frame at rest, so that only what moves is gone through, the last found first. */
function backwards({ size, rank, order, lower, scale }: Factored, part: Float64Array): Float64Array {
  const moved = new Float64Array(size);
  const moving = new Int32Array(rank);
  let count = 0;
  for (let step = rank - 1; step >= 0; step -= 1) {
    const column = at(order, step);
    let rest = at(part, step);
    for (let last = count - 1; last >= 0; last -= 1) {
      const row = at(moving, last);
      rest -= at(lower, row * size + column) * at(moved, row);
    }
    const own = rest / at(lower, column * (size + 1));
    moved[column] = own;
    if (own === 0) continue;
    moving[count] = column;
    count += 1;
  }
  return moved.map((value, index) => value * at(scale, index));
}

function bringGreatestForward(lower: Float64Array, order: Int32Array, step: number, size: number): void {
  let best = step;
  let greatest = at(lower, at(order, step) * (size + 1));
  for (let other = step + 1; other < size; other += 1) {
    const own = at(lower, at(order, other) * (size + 1));
    if (own > greatest) [best, greatest] = [other, own];
  }
  [order[step], order[best]] = [at(order, best), at(order, step)];
}

/** Of a frame most freedoms do not meet: only what the pivot meets is changed. */
function eliminate(lower: Float64Array, order: Int32Array, step: number, size: number): void {
  const pivot = at(order, step);
  const root = Math.sqrt(at(lower, pivot * (size + 1)));
  lower[pivot * (size + 1)] = root;
  const met = new Int32Array(size - step);
  const shares = new Float64Array(size - step);
  let count = 0;
  for (let after = step + 1; after < size; after += 1) {
    const row = at(order, after);
    const share = at(lower, row * size + pivot) / root;
    lower[row * size + pivot] = share;
    if (share === 0) continue;
    met[count] = row;
    shares[count] = share;
    count += 1;
  }
  for (let one = 0; one < count; one += 1) {
    const start = at(met, one) * size;
    const share = at(shares, one);
    for (let other = 0; other < count; other += 1) {
      const place = start + at(met, other);
      lower[place] = at(lower, place) - share * at(shares, other);
    }
  }
}

const at = (values: Float64Array | Int32Array, index: number): number => values[index] ?? 0;
