import { Reals, Wholes, real, whole } from './arrays.ts';
import type { Lines } from './candidates.ts';
import { newWalk, walkAlong } from './grid.ts';
import type { Walk } from './grid.ts';
import type { Occluders } from './occluders.ts';
import { firstSide, greatestZ } from './occluders.ts';
import type { Tolerances } from './tolerances.ts';

/** Straight pieces of lines that nothing hides. */
export interface Pieces {
  /** Place of each piece's line in the list of lines. */
  readonly line: Int32Array;
  /** Shares of the line, 0…1, at which each piece begins and ends. */
  readonly from: Float64Array;
  readonly to: Float64Array;
}

/** The stretches of one line that are hidden, as shares of it: in order and apart from each other. */
interface Hidden {
  count: number;
  from: Float64Array;
  to: Float64Array;
}

/** Cuts every line into the pieces that are seen. */
export function visiblePieces(lines: Lines, occluders: Occluders, tolerances: Tolerances): Pieces {
  const tested = new Int32Array(occluders.body.length).fill(-1);
  const hidden: Hidden = { count: 0, from: new Float64Array(64), to: new Float64Array(64) };
  const walk = newWalk();
  const [line, from, to] = [new Wholes(), new Reals(), new Reals()];
  for (let l = 0; l < lines.kinds.length; l++) {
    const dx = real(lines.ends, 6 * l + 3) - real(lines.ends, 6 * l);
    const dy = real(lines.ends, 6 * l + 4) - real(lines.ends, 6 * l + 1);
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length < tolerances.sliver) continue;
    findHidden(hidden, lines.ends, l, occluders, tested, tolerances.behind, walk);
    let start = 0;
    for (let h = 0; h <= hidden.count; h++) {
      const end = h < hidden.count ? real(hidden.from, h) : 1;
      if ((end - start) * length > tolerances.sliver) {
        line.push(l);
        from.push(start);
        to.push(end);
      }
      if (h < hidden.count) start = real(hidden.to, h);
    }
  }
  return { line: line.done(), from: from.done(), to: to.done() };
}

/** Gathers the stretches of a line that lie behind a face. */
function findHidden(hidden: Hidden, ends: Float64Array, line: number, occluders: Occluders, tested: Int32Array, behind: number, walk: Walk): void {
  const x0 = real(ends, 6 * line);
  const y0 = real(ends, 6 * line + 1);
  const z0 = real(ends, 6 * line + 2);
  const x1 = real(ends, 6 * line + 3);
  const y1 = real(ends, 6 * line + 4);
  const z1 = real(ends, 6 * line + 5);
  const { grid: { starts, members }, starts: faceStarts, numbers } = occluders;
  hidden.count = 0;
  walkAlong(walk, occluders.grid, x0, y0, x1, y1);
  for (let w = 0; w < walk.count; w++) {
    const cell = whole(walk.cells, w);
    const farthest = Math.min(z0 + real(walk.from, w) * (z1 - z0), z0 + real(walk.to, w) * (z1 - z0));
    const end = whole(starts, cell + 1);
    for (let m = whole(starts, cell); m < end; m++) {
      const face = whole(members, m);
      const at = whole(faceStarts, face);
      if (real(numbers, at + greatestZ) <= farthest) break;
      if (whole(tested, face) === line) continue;
      tested[face] = line;
      hide(hidden, numbers, at, whole(faceStarts, face + 1), x0, y0, z0, x1, y1, z1, behind);
      if (hidden.count === 1 && real(hidden.from, 0) <= 0 && real(hidden.to, 0) >= 1) return;
    }
  }
}

/** Adds the one stretch of a line behind a face: within its sides and deeper than `behind` under its plane. */
function hide(hidden: Hidden, f: Float64Array, at: number, end: number, x0: number, y0: number, z0: number, x1: number, y1: number, z1: number, behind: number): void {
  let from = 0;
  let to = 1;
  for (let side = at + firstSide; side < end; side += 3) {
    const a = real(f, side);
    const b = real(f, side + 1);
    const c = real(f, side + 2);
    const p = a * x0 + b * y0 - c;
    const q = a * x1 + b * y1 - c;
    if (p < 0) {
      if (q < 0) return;
      from = Math.max(from, p / (p - q));
    } else if (q < 0) to = Math.min(to, p / (p - q));
    if (from >= to) return;
  }
  const nx = real(f, at);
  const ny = real(f, at + 1);
  const nz = real(f, at + 2);
  const d = real(f, at + 3) - behind;
  const p = d - (nx * x0 + ny * y0 + nz * z0);
  const q = d - (nx * x1 + ny * y1 + nz * z1);
  if (p <= 0) {
    if (q <= 0) return;
    from = Math.max(from, p / (p - q));
  } else if (q <= 0) to = Math.min(to, p / (p - q));
  if (from < to) addStretch(hidden, from, to);
}

/** Joins a stretch with those that it meets. */
function addStretch(hidden: Hidden, from: number, to: number): void {
  let first = 0;
  while (first < hidden.count && real(hidden.to, first) < from) first++;
  let last = first;
  while (last < hidden.count && real(hidden.from, last) <= to) last++;
  if (first < last) {
    hidden.from[first] = Math.min(from, real(hidden.from, first));
    hidden.to[first] = Math.max(to, real(hidden.to, last - 1));
    hidden.from.copyWithin(first + 1, last, hidden.count);
    hidden.to.copyWithin(first + 1, last, hidden.count);
    hidden.count -= last - first - 1;
    return;
  }
  if (hidden.count === hidden.from.length) makeRoom(hidden);
  hidden.from.copyWithin(first + 1, first, hidden.count);
  hidden.to.copyWithin(first + 1, first, hidden.count);
  hidden.from[first] = from;
  hidden.to[first] = to;
  hidden.count++;
}

function makeRoom(hidden: Hidden): void {
  const { from, to } = hidden;
  hidden.from = new Float64Array(2 * from.length);
  hidden.to = new Float64Array(2 * to.length);
  hidden.from.set(from);
  hidden.to.set(to);
}

/** Coordinate k (x y z) of the point of a line at a share of its length, in view coordinates. */
export function onLine(lines: Lines, line: number, share: number, k: 0 | 1 | 2): number {
  const start = real(lines.ends, 6 * line + k);
  return start + share * (real(lines.ends, 6 * line + 3 + k) - start);
}
