import type { Leaf, StitchedSheet } from '../../../src/booklet/stitch/index.ts';

/** One half of a sheet of paper with what is printed on its two faces. */
interface HalfSheet {
  readonly front: Leaf;
  readonly back: Leaf;
}

/**
 * The sheet as paper. It was turned over its short edge (its upright one, as it lies) between the sides, so what is on the
 * left of the back is behind what is on the right of the front.
 */
const halves = ({ front, back }: StitchedSheet): { readonly left: HalfSheet; readonly right: HalfSheet } => ({
  left: { front: front.left, back: back.right },
  right: { front: front.right, back: back.left },
});

/**
 * Folds each signature's sheets, the front outside, lays them into one another and the signatures one behind the other,
 * and leafs through: the pages as a reader meets them. A book bound on the left is opened at the right halves' fronts.
 */
export function leafedThrough(sheets: readonly StitchedSheet[], dir: 'ltr' | 'rtl'): readonly Leaf[] {
  const signatures = [...new Set(sheets.map(({ signature }) => signature))].sort((a, b) => a - b);
  return signatures.flatMap((signature) => {
    const nested = sheets.filter((sheet) => sheet.signature === signature).sort((a, b) => a.depth - b.depth).map(halves);
    const first = nested.map(({ left, right }) => (dir === 'ltr' ? right : left));
    const second = nested.map(({ left, right }) => (dir === 'ltr' ? left : right)).reverse();
    return [...first.flatMap(({ front, back }) => [front, back]), ...second.flatMap(({ front, back }) => [back, front])];
  });
}
