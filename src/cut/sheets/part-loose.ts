import { overlaps } from './off-cuts.ts';
import type { Axis, CutPart, Lying, Rectangle } from './types.ts';

const NEAR = 1e-6;
/** A strip this narrow is not cut off, mm. */
const SLIVER = 0.5;

/**
 * Loose pieces parted by straight cuts from edge to edge as far as such cuts go; what no such cut parts stays loose.
 * A cut is made beyond a piece and takes the kerf.
 */
export function partLoose(lies: readonly Lying[], region: Rectangle, kerf: number): CutPart {
  const [only, another] = lies;
  if (only === undefined) return { part: 'off-cut', region };
  if (another === undefined && region.width - only.width <= SLIVER && region.height - only.height <= SLIVER) return { part: 'piece', lies: only };
  for (const axis of ['y', 'x'] as const) {
    for (const at of placesOf(lies, axis, kerf)) {
      const cut = cutAt(lies, region, axis, at, kerf);
      if (cut !== null) return cut;
    }
  }
  return { part: 'loose', lies, region };
}

/** Where a cut might go: beyond a piece, and before one. */
function placesOf(lies: readonly Lying[], axis: Axis, kerf: number): readonly number[] {
  const along = axis === 'x' ? 'width' : 'height';
  return [...new Set(lies.flatMap((each) => [each[axis] + each[along], each[axis] - kerf]))].sort((a, b) => b - a);
}

function cutAt(lies: readonly Lying[], region: Rectangle, axis: Axis, at: number, kerf: number): CutPart | null {
  const along = axis === 'x' ? 'width' : 'height';
  const begin = region[axis];
  const end = begin + region[along];
  if (at - begin <= SLIVER || end - at <= SLIVER) return null;
  const blade: Rectangle = { ...region, [axis]: at + NEAR, [along]: Math.max(NEAR, kerf - 2 * NEAR) };
  if (lies.some((each) => overlaps(each, blade))) return null;
  const before = lies.filter((each) => each[axis] + each[along] <= at + 2 * NEAR);
  const after = lies.filter((each) => !before.includes(each));
  const first: Rectangle = { ...region, [along]: at - begin };
  const second: Rectangle = { ...region, [axis]: at + kerf, [along]: Math.max(0, end - at - kerf) };
  return { part: 'cut', axis, at, region, first: partLoose(before, first, kerf), second: partLoose(after, second, kerf) };
}
