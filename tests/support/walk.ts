import type { Flap, FlatPattern, Side, Vec2 } from '../../src/model/index.ts';

/** A place on the neutral layer of a folded flap: a outwards from the tube's axis line, b over the panel's inner face, and its heading. */
export interface Walked {
  readonly a: number;
  readonly b: number;
  readonly heading: number;
}

/**
 * Walks a finished flap from the lines printed on the pattern alone, the way a worker measures them: out from
 * the inside line, a turn at each crease, back at the half-cut. Independent of the model's own section.
 * Gives the place of a line `outwards` mm from the inside line on the neutral layer (k·t under the inner
 * face); on the tab, its outer skin.
 */
export function walkedTo(pattern: FlatPattern, flap: Flap, outwards: number): Walked {
  const inset = outOf(pattern, flap.side) - (alongX(flap.side) ? pattern.inside[1] : pattern.inside[0]);
  const depth = pattern.neutralLayer * pattern.thickness;
  let [a, b, heading, reached] = [-inset, -depth, 0, 0];
  const walk = (to: number): void => {
    a += (to - reached) * Math.cos(heading);
    b += (to - reached) * Math.sin(heading);
    reached = to;
  };
  for (const crease of flap.creases.filter((place) => place < outwards)) {
    walk(crease);
    heading += flap.creaseAngle;
  }
  if (outwards <= flap.halfCut) {
    walk(outwards);
    return { a, b, heading };
  }
  walk(flap.halfCut);
  // From the neutral layer to the outer skin, which is the hinge: to the right of the heading.
  const toSkin = pattern.thickness - depth;
  a += toSkin * Math.sin(heading);
  b -= toSkin * Math.cos(heading);
  heading -= flap.turnBack;
  walk(outwards);
  return { a, b, heading };
}

export const alongX = (side: Side): boolean => side === 'front' || side === 'back';

/** Half distance between the axes of this side's tube and its opposite, mm. */
export const outOf = (pattern: FlatPattern, side: Side): number => (alongX(side) ? pattern.axes[1] : pattern.axes[0]);

/** A place `along` a side and `out` from the panel's middle, in panel coordinates. */
export function onPanel(side: Side, along: number, out: number): Vec2 {
  switch (side) {
    case 'left': return [-out, along];
    case 'right': return [out, along];
    case 'front': return [along, -out];
    case 'back': return [along, out];
  }
}

/** The outline of a folded tab seen from above, from the lines of the pattern. */
export function tabFromAbove(pattern: FlatPattern, flap: Flap): readonly Vec2[] {
  const out = outOf(pattern, flap.side);
  const hinge = out + walkedTo(pattern, flap, flap.halfCut + 1e-9).a;
  const edge = out + walkedTo(pattern, flap, flap.edge).a;
  const { from, to, corner, side } = flap;
  return [
    onPanel(side, from, hinge), onPanel(side, to, hinge), onPanel(side, to, edge + corner),
    onPanel(side, to - corner, edge), onPanel(side, from + corner, edge), onPanel(side, from, edge + corner),
  ];
}
