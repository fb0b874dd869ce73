import type { Folding, Shape, Side } from './types.ts';

export const WRAPPED: Folding = { left: 1, right: 1, front: 1, back: 1 };
export const FLAT: Folding = { left: 0, right: 0, front: 0, back: 0 };

/** A panel with the holes that it has so far, of those that are punched where its tabs lie. */
export function punchedShape(shape: Shape, isPunched: (flap: string) => boolean): Shape {
  if (shape.form === 'panel') {
    const { pattern } = shape;
    const areFlat = pattern.holes.every(({ punched }) => punched === 'flat');
    const isThere = (side: Side): boolean => areFlat || isPunched(side);
    return { ...shape, pattern: { ...pattern, holes: pattern.holes.filter(({ side }) => isThere(side)), flaps: pattern.flaps.map((flap) => (isThere(flap.side) ? flap : { ...flap, pins: [] })) } };
  }
  if (shape.form !== 'folded') return shape;
  // What is punched under a tab is never seen.
  const holes = shape.pattern.holes.filter(({ punched, flap, depth }) => punched === 'flat' || (flap !== null && depth === null && isPunched(flap)));
  return { ...shape, pattern: { ...shape.pattern, holes } };
}

/** How deep a half-cut goes, mm: down to the outer skin, which stays as the hinge. */
export const halfCutDepth = ({ thickness, skin }: { readonly thickness: number; readonly skin: number }): number => thickness - skin;
