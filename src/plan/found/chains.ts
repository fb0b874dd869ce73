import { bendTurnsAt, chainSection, onSection, reachedAt, type Bend, type Pattern, type PatternFlap, type Strip, type Vec2, type Vec3 } from '../../model/index.ts';
import type { Piece } from './convex.ts';
import { hullOf } from './hull.ts';
import { prism } from './prisms.ts';

/** A facet begins and ends this far from its bends, so that it has their mitres, mm. */
const HAIR = 0.01;

/**
 * Strips of a flap as convex bodies at each stage that is asked for: from bend to bend, the tab with snipped corners. In
 * panel coordinates. A facet that stands as it stood at the stage asked for before is the same body.
 */
export function chainPieces(pattern: Pattern, flap: PatternFlap, strips: readonly Strip[]): (stage: number) => readonly Piece[] {
  const facets = strips.flatMap((strip) => facetsBetween(flap.bends, strip.from, strip.to).map(([from, to]) => facetPlaces(pattern, flap, strip, from, to)));
  return (stage) => {
    const turns = bendTurnsAt(flap.bends, flap.order, stage);
    return facets.map((place) => place(turns));
  };
}

function facetPlaces(pattern: Pattern, flap: PatternFlap, strip: Strip, from: number, to: number): (turns: readonly number[]) => Piece {
  const isTab = strip === flap.strips.at(-1) && to === strip.to && flap.corner > 0;
  const before = flap.bends.map(({ at }) => at <= to);
  let last: { readonly turns: readonly number[]; readonly piece: Piece } | null = null;
  return (turns) => {
    if (last?.turns.every((turn, bend) => turn === turns[bend] || before[bend] === false) === true) return last.piece;
    const piece = isTab ? tabPiece(pattern, flap, strip, turns, from)
      : prism(hullOf(chainSection(pattern, flap.bends, turns, from, to)), strip.start, strip.end, placing(flap));
    last = { turns, piece };
    return piece;
  };
}

/** The stretches between bends from one distance to another; a half-cut belongs to neither of its two. */
export function facetsBetween(bends: readonly Bend[], first: number, last: number): readonly (readonly [number, number])[] {
  const inside = bends.filter(({ at }) => at > first && at < last).sort((a, b) => a.at - b.at);
  const starts = [first, ...inside.map(({ at, is }) => (is === 'crease' ? at - HAIR : at + HAIR))];
  const ends = [...inside.map(({ at, is }) => (is === 'crease' ? at + HAIR : at - HAIR)), last];
  return starts.map((start, index) => [start, ends[index] ?? last]);
}

/** From a flap's section (a outwards from its root line, b over the inner face) and along its side into panel coordinates. */
const placing = (flap: PatternFlap) => (a: number, b: number, s: number): Vec3 => onSection(flap, s, [a, b]);

function tabPiece(pattern: Pattern, flap: PatternFlap, strip: Strip, turns: readonly number[], from: number): Piece {
  const { at, heading } = reachedAt(pattern, flap.bends, turns, from);
  const width = strip.to - from;
  const snip = Math.min(flap.corner, width);
  const outline: readonly Vec2[] = [
    [0, strip.start], [width - snip, strip.start], [width, strip.start + snip], [width, strip.end - snip], [width - snip, strip.end], [0, strip.end],
  ];
  const place = placing(flap);
  const [cos, sin] = [Math.cos(heading), Math.sin(heading)];
  return prism(outline, -pattern.thickness, 0, (u, v, w) => place(at[0] + u * cos - w * sin, at[1] + u * sin + w * cos, v));
}

/** The stage at which a wall is up and its rim still straight; 0 for a flap that is no wall. */
export const raisedAt = ({ wall, order }: PatternFlap): number => (order.length === 0 ? 0 : wall / order.length);

/** Stages from the one at which it comes to hand, so close that nothing bulges by more than told, mm. */
export function chainStages(flap: PatternFlap, bulge: number): readonly number[] {
  const { bends, edge, order } = flap;
  const farthest = edge - Math.min(0, ...bends.map(({ at }) => at)) - (bends[0]?.at ?? 0);
  const step = 2 * Math.acos(1 - bulge / Math.max(farthest, bulge));
  const steps = order.length * Math.ceil(Math.max(...bends.map(({ turn }) => Math.abs(turn)), step) / step);
  const raised = raisedAt(flap);
  return Array.from({ length: steps + 1 }, (_, index) => raised + ((1 - raised) * index) / steps);
}
