import { real, whole } from './arrays.ts';
import type { Lines } from './candidates.ts';
import { alongLine } from './grid.ts';
import type { Occluders } from './occluders.ts';
import { greatestZ, planeAt, stride } from './occluders.ts';
import type { Tolerances } from './tolerances.ts';

/** A straight piece of a line that nothing hides. */
export interface Piece {
  /** Place of the line in the list of lines. */
  readonly line: number;
  /** Shares of the line, 0…1, at which the piece begins and ends. */
  readonly from: number;
  readonly to: number;
}

/** Cuts every line into the pieces that are seen. */
export function visiblePieces(lines: Lines, occluders: Occluders, tolerances: Tolerances): readonly Piece[] {
  const tested = new Int32Array(occluders.triangles.length).fill(-1);
  const pieces: Piece[] = [];
  for (let line = 0; line < lines.kinds.length; line++) {
    const length = Math.hypot(real(lines.ends, 6 * line + 3) - real(lines.ends, 6 * line), real(lines.ends, 6 * line + 4) - real(lines.ends, 6 * line + 1));
    if (length < tolerances.sliver) continue;
    const hidden = hiddenSpans(lines.ends, line, occluders, tested, tolerances.behind);
    let from = 0;
    for (const [start, end] of hidden) {
      if ((start - from) * length > tolerances.sliver) pieces.push({ line, from, to: start });
      if (end > from) from = end;
    }
    if ((1 - from) * length > tolerances.sliver) pieces.push({ line, from, to: 1 });
  }
  return pieces;
}

/** Spans of a line (shares, sorted by their start) that lie behind a face. */
function hiddenSpans(ends: Float64Array, line: number, occluders: Occluders, tested: Int32Array, behind: number): readonly (readonly [number, number])[] {
  const x0 = real(ends, 6 * line);
  const y0 = real(ends, 6 * line + 1);
  const z0 = real(ends, 6 * line + 2);
  const x1 = real(ends, 6 * line + 3);
  const y1 = real(ends, 6 * line + 4);
  const z1 = real(ends, 6 * line + 5);
  const { grid, numbers } = occluders;
  const spans: [number, number][] = [];
  alongLine(grid, x0, y0, x1, y1, (cell, from, to) => {
    const farthest = Math.min(z0 + from * (z1 - z0), z0 + to * (z1 - z0));
    const end = whole(grid.starts, cell + 1);
    for (let m = whole(grid.starts, cell); m < end; m++) {
      const face = whole(grid.members, m);
      if (real(numbers, stride * face + greatestZ) <= farthest) break;
      if (whole(tested, face) === line) continue;
      tested[face] = line;
      const span = hiddenBy(numbers, stride * face, x0, y0, z0, x1, y1, z1, behind);
      if (!span) continue;
      spans.push(span);
      if (span[0] <= 0 && span[1] >= 1) return true;
    }
    return false;
  });
  return spans.length < 2 ? spans : spans.sort((p, q) => p[0] - q[0] || p[1] - q[1]);
}

/** The one span of a line behind a face: within its three sides and deeper than `behind` under its plane. */
function hiddenBy(f: Float64Array, at: number, x0: number, y0: number, z0: number, x1: number, y1: number, z1: number, behind: number): [number, number] | null {
  let from = 0;
  let to = 1;
  for (let side = at; side < at + planeAt; side += 3) {
    const a = real(f, side);
    const b = real(f, side + 1);
    const c = real(f, side + 2);
    const p = a * x0 + b * y0 - c;
    const q = a * x1 + b * y1 - c;
    if (p < 0 && q < 0) return null;
    if (p < 0) from = Math.max(from, p / (p - q));
    else if (q < 0) to = Math.min(to, p / (p - q));
    if (from >= to) return null;
  }
  const plane = at + planeAt;
  const nx = real(f, plane);
  const ny = real(f, plane + 1);
  const nz = real(f, plane + 2);
  const d = real(f, plane + 3) - behind;
  const p = d - (nx * x0 + ny * y0 + nz * z0);
  const q = d - (nx * x1 + ny * y1 + nz * z1);
  if (p <= 0 && q <= 0) return null;
  if (p <= 0) from = Math.max(from, p / (p - q));
  else if (q <= 0) to = Math.min(to, p / (p - q));
  return from < to ? [from, to] : null;
}

/** Point of a line at a share of its length: x y z in view coordinates. */
export function pointOnLine(lines: Lines, line: number, share: number): readonly [number, number, number] {
  const at = (k: number): number => real(lines.ends, 6 * line + k) + share * (real(lines.ends, 6 * line + 3 + k) - real(lines.ends, 6 * line + k));
  return [at(0), at(1), at(2)];
}
