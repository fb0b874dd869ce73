import { newLineCaches, cachedTopology } from '../../../src/draw/lines/caches.ts';
import { candidateLines } from '../../../src/draw/lines/candidates.ts';
import type { Lines } from '../../../src/draw/lines/candidates.ts';
import { crossingsOf } from '../../../src/draw/lines/crossings.ts';
import { occludersOf } from '../../../src/draw/lines/occluders.ts';
import { stageOf } from '../../../src/draw/lines/stage.ts';
import { tolerancesFor } from '../../../src/draw/lines/tolerances.ts';
import type { Tolerances } from '../../../src/draw/lines/tolerances.ts';
import { viewMatrix } from '../../../src/draw/lines/viewMatrix.ts';
import { onLine, visiblePieces } from '../../../src/draw/lines/visible.ts';
import type { Body } from '../../../src/draw/types.ts';
import type { Vec3 } from '../../../src/model/index.ts';
import type { View } from '../../../src/scene/index.ts';

/** A straight piece of a line that nothing hides, between two shares of the line. */
export interface Piece {
  readonly line: number;
  readonly from: number;
  readonly to: number;
}

/** Point of a line at a share of its length, in view coordinates. */
export const pointOnLine = (lines: Lines, line: number, share: number): Vec3 => [onLine(lines, line, share, 0), onLine(lines, line, share, 1), onLine(lines, line, share, 2)];

/** The drawing's first half: lines and the pieces kept, with tolerances that a test may spoil. */
export function keptPieces(bodies: readonly Body[], view: View, spoilt: Partial<Tolerances> = {}): { readonly lines: Lines; readonly pieces: readonly Piece[] } {
  const caches = newLineCaches();
  const topologies = bodies.map(({ mesh }) => cachedTopology(caches, mesh));
  const stage = stageOf(bodies, topologies, viewMatrix(view));
  const tolerances = { ...tolerancesFor(stage.diagonal), ...spoilt };
  const lines = candidateLines(stage, crossingsOf(bodies, topologies, caches));
  const { line, from, to } = visiblePieces(lines, occludersOf(stage, tolerances), tolerances);
  return { lines, pieces: Array.from(line, (own, p) => ({ line: own, from: from[p] ?? 0, to: to[p] ?? 0 })) };
}

/** Points on pieces, a few mm apart but never within 0.05 mm of a piece's end. */
export function samples(lines: Lines, pieces: readonly Piece[]): readonly Vec3[] {
  return pieces.flatMap((piece) => {
    const [a, b] = [pointOnLine(lines, piece.line, piece.from), pointOnLine(lines, piece.line, piece.to)];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length < 0.15) return [];
    const count = Math.min(40, Math.ceil(length / 5));
    const margin = 0.05 / length;
    return Array.from({ length: count }, (_, k) =>
      pointOnLine(lines, piece.line, piece.from + (piece.to - piece.from) * (margin + (1 - 2 * margin) * ((k + 0.5) / count))));
  });
}

/** What was taken away: the rest of every line. */
export function removedPieces(lines: Lines, pieces: readonly Piece[]): readonly Piece[] {
  const byLine = new Map<number, Piece[]>();
  for (const piece of pieces) byLine.set(piece.line, [...(byLine.get(piece.line) ?? []), piece]);
  return Array.from(lines.kinds.keys()).flatMap((line) => {
    const kept = byLine.get(line) ?? [];
    const cuts = [0, ...kept.flatMap(({ from, to }) => [from, to]), 1];
    return cuts.flatMap((from, k) => (k % 2 === 0 ? [{ line, from, to: cuts[k + 1] ?? 1 }] : []));
  });
}
