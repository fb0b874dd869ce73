import { Reals, flag, real, whole } from './arrays.ts';
import type { Crossings } from './crossings.ts';
import { facing } from './stage.ts';
import type { Stage } from './stage.ts';

/** Corner between two faces that are both seen. */
const crease = 1;
/** Edge between a face that is seen and one that is not: what lies beyond is farther away. */
export const contour = 2;
/** Where one body enters another. */
const crossing = 4;

/** Lines that are drawn where nothing lies before them, in view coordinates. */
export interface Lines {
  /** x y z of both ends, six numbers a line. */
  readonly ends: Float64Array;
  /** `crease`, `contour` or `crossing`. */
  readonly kinds: Uint8Array;
}

/** The lines worth drawing. An inside corner with one face seen is always hidden by its other face. */
export function candidateLines(stage: Stage, crossings: readonly Crossings[]): Lines {
  const ends = new Reals();
  const kinds: number[] = [];
  stage.topologies.forEach((topology, b) => {
    const point = whole(stage.firstPoint, b);
    for (let e = 0; e < topology.smooth.length; e++) {
      const left = facing(stage, b, whole(topology.edges, 4 * e + 2));
      const right = facing(stage, b, whole(topology.edges, 4 * e + 3));
      if (left + right === 0 || (left === right ? flag(topology.smooth, e) : flag(topology.concave, e)) === 1) continue;
      kinds.push(left === right ? crease : contour);
      pushPoint(ends, stage.points, point + whole(topology.edges, 4 * e));
      pushPoint(ends, stage.points, point + whole(topology.edges, 4 * e + 1));
    }
  });
  for (const meeting of crossings) pushCrossings(ends, kinds, stage, meeting);
  return { ends: ends.done(), kinds: Uint8Array.from(kinds) };
}

function pushPoint(ends: Reals, points: Float64Array, p: number): void {
  for (let k = 3 * p; k < 3 * p + 3; k++) ends.push(real(points, k));
}

/** A crossing is an inside corner, so it is seen only where both faces are. */
function pushCrossings(ends: Reals, kinds: number[], stage: Stage, { first, second, segments }: Crossings): void {
  const m = stage.matrices[first]?.elements ?? [];
  for (let s = 0; s < segments.length; s += 8) {
    if (facing(stage, first, real(segments, s + 6)) + facing(stage, second, real(segments, s + 7)) < 2) continue;
    kinds.push(crossing);
    for (let end = s; end < s + 6; end += 3) {
      const [x, y, z] = [real(segments, end), real(segments, end + 1), real(segments, end + 2)];
      for (let k = 0; k < 3; k++) ends.push((m[12 + k] as number) + (m[k] as number) * x + (m[4 + k] as number) * y + (m[8 + k] as number) * z);
    }
  }
}
