import type { Axis, CutPart, Rectangle } from './types.ts';

/** A straight cut from edge to edge of the part it is made in, mm from the panel's lower left corner. */
export interface NumberedCut {
  /** From 1, in the order in which the cuts are made. */
  readonly number: number;
  /** `x`: across the panel's length, at a place along it; `y`: along the length, at a height. */
  readonly axis: Axis;
  readonly at: number;
  /** Where it begins and ends along the other side. */
  readonly from: number;
  readonly to: number;
}

/**
 * The cuts in an order in which each runs from edge to edge: all parallel cuts of a part, then those of the parts
 * they leave, each part finished before the next.
 */
export function numberedCuts(cuts: CutPart): readonly NumberedCut[] {
  return inOrder(cuts).map((cut, index) => ({ ...cut, number: index + 1 }));
}

function inOrder(part: CutPart): readonly Omit<NumberedCut, 'number'>[] {
  if (part.part !== 'cut') return [];
  const { parallel, parts } = spread(part, part.axis);
  return [...parallel.map(({ at, region }) => cutAcross(part.axis, at, region)), ...parts.flatMap(inOrder)];
}

type Cut = CutPart & { readonly part: 'cut' };

/** Cuts of one direction right inside one another, as one row of cuts and the parts between them. */
function spread(part: CutPart, axis: Axis): { readonly parallel: readonly Cut[]; readonly parts: readonly CutPart[] } {
  if (part.part !== 'cut' || part.axis !== axis) return { parallel: [], parts: [part] };
  const [first, second] = [spread(part.first, axis), spread(part.second, axis)];
  return { parallel: [...first.parallel, part, ...second.parallel], parts: [...first.parts, ...second.parts] };
}

function cutAcross(axis: Axis, at: number, region: Rectangle): Omit<NumberedCut, 'number'> {
  return axis === 'x' ? { axis, at, from: region.y, to: region.y + region.height } : { axis, at, from: region.x, to: region.x + region.width };
}
