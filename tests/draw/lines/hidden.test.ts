import { describe, expect, it } from 'vitest';
import type { Tolerances } from '../../../src/draw/lines/tolerances.ts';
import type { Lines } from '../../../src/draw/lines/candidates.ts';
import type { Vec3 } from '../../../src/model/index.ts';
import type { View } from '../../../src/scene/index.ts';
import { isHidden, isSeen, raysOf } from './rays.ts';
import { keptPieces, pointOnLine, removedPieces, samples } from './stages.ts';
import type { Piece } from './stages.ts';
import { testRack } from './testRack.ts';
import { fromAbove, fromFront, isometric, scatteredViews, towards } from './views.ts';

const rack = testRack(1, 24);

/** Counts sampled points that ray casting calls wrong: kept though hidden, removed though seen. */
function compare(view: View, spoilt: Partial<Tolerances> = {}) {
  const rays = raysOf(rack, view);
  const { lines, pieces } = keptPieces(rack, view, spoilt);
  const kept = samples(lines, pieces);
  const removed = samples(lines, removedPieces(lines, pieces));
  const shown = kept.filter((point) => !isSeen(rays, point) && !underNearerLine(lines, pieces, point));
  const lost = removed.filter((point) => !isHidden(rays, point));
  return { kept: kept.length, removed: removed.length, shown: shown.length, lost: lost.length };
}

/** In axis-aligned views a hidden edge may lie exactly under a contour that is drawn: no fault of the picture. */
function underNearerLine(lines: Lines, pieces: readonly Piece[], [x, y, z]: Vec3): boolean {
  return pieces.some(({ line, from, to }) => {
    const [a, b] = [pointOnLine(lines, line, from), pointOnLine(lines, line, to)];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const share = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)));
    return Math.hypot(a[0] + share * dx - x, a[1] + share * dy - y) < 0.01 && a[2] + share * (b[2] - a[2]) > z + 0.01;
  });
}

describe('hidden lines against ray casting', () => {
  const views: Record<string, View> = {
    'true isometric': isometric,
    'isometric from below': towards(-1, -1, -1),
    'from the front': fromFront,
    'from the side': towards(1, 0, 0),
    'from above, up along the view': { towardsEye: [0, 0, 3], up: [0, 0, 1] },
    'from above': fromAbove,
    ...Object.fromEntries(scatteredViews(6).map((view, k) => [`scattered ${k}`, view])),
  };
  it.each(Object.entries(views))('%s: what is kept is seen, what is removed is not', (_, view) => {
    const { kept, removed, shown, lost } = compare(view);
    expect(kept).toBeGreaterThan(400);
    expect(removed).toBeGreaterThan(400);
    expect({ shown, lost }).toEqual({ shown: 0, lost: 0 });
  });
});

describe('the check itself', () => {
  it.each<[string, Partial<Tolerances>]>([
    ['lines 2 mm behind a face stay', { behind: 2 }],
    ['faces end 0.5 mm too early at contours', { contourInset: 0.5 }],
    ['faces leave gaps of 0.1 mm between them', { innerGrowth: -0.05 }],
  ])('sees that %s', (_, spoilt) => {
    expect(compare(isometric, spoilt).shown).toBeGreaterThan(5);
  });

  it('sees that faces reach 0.5 mm too far', () => {
    expect(compare(isometric, { contourInset: -0.5, behind: -1 }).lost).toBeGreaterThan(5);
  });
});
