import type { Flap, FlatPattern, Side, Vec2 } from '../../model/index.ts';

/**
 * How far inside the tube's axis line the half-cut lies once the tab is flat, mm: r cot(β/2) + t tan(β/2).
 * The run comes down at β and meets the inner face at r cot(β/2); the hinge is in the outer skin, t higher,
 * and the mitre of a turn by β there is t tan(β/2) long.
 */
export const foldedHinge = (pattern: FlatPattern, turnBack: number): number =>
  pattern.wrapRadius / Math.tan(turnBack / 2) + pattern.thickness * Math.tan(turnBack / 2);

/** Outline of a tab folded flat on the inner face, in panel coordinates, with its corners snipped. Convex. */
export function foldedTab(pattern: FlatPattern, flap: Flap): readonly Vec2[] {
  const hinge = foldedHinge(pattern, flap.turnBack);
  const edge = hinge + flap.edge - flap.halfCut;
  const { from, to, corner } = flap;
  const outline: readonly Vec2[] = [
    [from, hinge], [to, hinge], [to, edge - corner], [to - corner, edge], [from + corner, edge], [from, edge - corner],
  ];
  return outline.map(([along, inwards]) => onPanel(pattern.axes, flap.side, along, inwards));
}

/** A point `inwards` mm from a side's tube axis, `along` it, in panel coordinates. */
function onPanel(axes: Vec2, side: Side, along: number, inwards: number): Vec2 {
  switch (side) {
    case 'left': return [-axes[0] + inwards, along];
    case 'right': return [axes[0] - inwards, along];
    case 'front': return [along, -axes[1] + inwards];
    case 'back': return [along, axes[1] - inwards];
  }
}

/**
 * Gap between two convex outlines, mm, by separating lines along their edges; below 0 the depth by which
 * they overlap. Corner to corner it is never more than the true gap.
 */
export const gapBetween = (a: readonly Vec2[], b: readonly Vec2[]): number =>
  Math.max(...[...normalsOf(a), ...normalsOf(b)].map((normal) => gapAlong(normal, a, b)));

function normalsOf(outline: readonly Vec2[]): readonly Vec2[] {
  return outline.flatMap((point, index) => {
    const next = outline[(index + 1) % outline.length] ?? point;
    const [x, y] = [next[0] - point[0], next[1] - point[1]];
    const length = Math.hypot(x, y);
    return length === 0 ? [] : [[y / length, -x / length] as const, [-y / length, x / length] as const];
  });
}

function gapAlong(normal: Vec2, a: readonly Vec2[], b: readonly Vec2[]): number {
  const along = (point: Vec2): number => point[0] * normal[0] + point[1] * normal[1];
  return Math.min(...b.map(along)) - Math.max(...a.map(along));
}
