import type { Vec2 } from '../../model/index.ts';
import type { Box, LineDrawing } from '../types.ts';
import { arrowReach, type Arrow } from './arrows.ts';
import { takenAlong, takenByDisc, type Cover } from './cover.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import { apart, distanceToPath, distanceToSegment, minus, plus, segmentsCross, unit, type Segment } from '../kit/geometry.ts';
import { pens } from '../kit/pens.ts';
import { detail, rim } from './sizes.ts';

/** A spot to enlarge: where it is on the view plane, its radius in mm of the scene, and its own line drawing. */
export interface Spot {
  readonly centre: Vec2;
  readonly radius: number;
  readonly drawing: LineDrawing;
}

/** A disc that no text may enter. */
export interface Disc {
  readonly centre: Vec2;
  readonly radius: number;
}

/** The two rings of a detail on paper. */
export interface Rings {
  readonly spot: Spot;
  readonly small: Disc;
  readonly big: Disc;
}

/** What the big rings have to keep off. `places` are those that labels and dimension lines will reach to. */
export interface Taken {
  readonly paper: Box;
  readonly fit: Fit;
  readonly cover: Cover;
  readonly arrows: readonly Arrow[];
  readonly places: readonly Vec2[];
}

interface Choice extends Rings {
  readonly cost: number;
}

/** In mm of distance that one would rather accept; the first three for a ring that lies wholly on what it hides, `reach` and `overFresh` for each mm of leader. */
const costs = { fresh: 3000, body: 600, lines: 300, arrow: 250, place: 150, smaller: 12, middle: 6, reach: 0.15, overFresh: 0.6, crossing: 80 } as const;
const gap = 2;

/**
 * Sets the big ring of each spot in the freest corner of the picture, or else at the middle of an edge,
 * all spots together so that their leaders do not cross. Null when there is no room for them.
 */
export function setRings(spots: readonly Spot[], taken: Taken): { readonly rings: readonly Rings[]; readonly cost: number } | null {
  const smalls = spots.map((spot) => smallRing(spot, taken.fit));
  const breadth = spots.length > 2 ? 4 : 8;
  const choices = spots.map((spot, i) => choicesFor(spot, smalls[i] ?? smallRing(spot, taken.fit), smalls, taken, breadth));
  return cheapest(choices, []);
}

function smallRing(spot: Spot, fit: Fit): Disc {
  return { centre: onPaper(fit, spot.centre), radius: Math.max(detail.smallLeast, spot.radius * fit.scale) };
}

/** The `breadth` cheapest places for one big ring off the small ones, in order. What a ring covers is dear to find out, so those that are too dear without it are not asked. */
function choicesFor(spot: Spot, small: Disc, smalls: readonly Disc[], taken: Taken, breadth: number): readonly Choice[] {
  const free = bigRings(taken.paper).filter(({ big }) => smalls.every((disc) => !meet(disc, big)));
  const inTurn = free.map(({ big, cost }, i) => ({ i, rings: { spot, small, big }, cost, uncovered: uncoveredCost(big, taken) })).sort((a, b) => a.cost + a.uncovered - b.cost - b.uncovered);
  const found: (Choice & { readonly i: number })[] = [];
  for (const { i, rings, cost, uncovered } of inTurn) {
    if ((found[breadth - 1]?.cost ?? Infinity) < cost + uncovered - HAIR) break;
    found.push({ ...rings, i, cost: cost + (coveredCost(rings.big, taken) + uncovered + leaderCost(rings, taken)) });
    found.sort((a, b) => a.cost - b.cost || a.i - b.i);
  }
  return found.slice(0, breadth);
}

/** Costs that differ by less may come of the order in which they were added up. */
const HAIR = 1e-6;

function meet(a: Disc, b: Disc): boolean {
  return apart(a.centre, b.centre) < a.radius + b.radius + gap;
}

/** Goes through all combinations: spots are few. */
function cheapest(choices: readonly (readonly Choice[])[], set: readonly Choice[]): { readonly rings: readonly Rings[]; readonly cost: number } | null {
  const [own, ...others] = choices;
  if (!own) return { rings: set, cost: set.reduce((sum, choice) => sum + choice.cost, 0) };
  let best: { readonly rings: readonly Rings[]; readonly cost: number } | null = null;
  for (const choice of own) {
    if (set.some((other) => meet(other.big, choice.big))) continue;
    const conflicts = set.reduce((sum, other) => sum + leaderConflicts(choice, other), 0);
    const found = cheapest(others, [...set, { ...choice, cost: choice.cost + conflicts }]);
    if (found && found.cost < (best?.cost ?? Infinity)) best = found;
  }
  return best;
}

function leaderConflicts(a: Rings, b: Rings): number {
  const [one, other] = [ringLeader(a), ringLeader(b)];
  const through = [[one, b.big], [one, b.small], [other, a.big], [other, a.small]] as const;
  const hits = through.filter(([line, disc]) => distanceToSegment(disc.centre, line) < disc.radius).length;
  return costs.crossing * (hits + (segmentsCross(one, other) ? 1 : 0));
}

function bigRings(paper: Box): { readonly big: Disc; readonly cost: number }[] {
  const widest = Math.min(detail.most, Math.max(detail.least, detail.share * Math.min(paper.width, paper.height)));
  const spots: readonly (readonly [number, number, number])[] = [
    [1, 0, 0], [1, 1, 0], [0, 0, 0], [0, 1, 0], [1, 0.5, 1], [0, 0.5, 1], [0.5, 0, 1], [0.5, 1, 1],
  ];
  return [1, 0.8].flatMap((share) =>
    spots.map(([x, y, middles]) => {
      const radius = widest * share;
      const edge = radius + pens.enlarged.width / 2 + rim;
      const centre: Vec2 = [edge + x * (paper.width - 2 * edge), edge + y * (paper.height - 2 * edge)];
      return { big: { centre, radius }, cost: (share < 1 ? costs.smaller : 0) + middles * costs.middle };
    }),
  );
}

/** What a big ring costs for the arrows it hits and the places it keeps others from. */
function uncoveredCost(big: Disc, { arrows, places }: Taken): number {
  const hit = arrows.filter((one) => reachOf(one, big.centre) < big.radius + 1).length;
  const lost = places.filter((place) => apart(place, big.centre) < big.radius + gap).length;
  return hit * costs.arrow + lost * costs.place;
}

function coveredCost({ centre, radius }: Disc, { cover, fit }: Taken): number {
  const under = takenByDisc(cover, fit, centre, radius);
  return under.fresh * costs.fresh + under.body * costs.body + under.lines * costs.lines;
}

function leaderCost(rings: Rings, { cover, fit }: Taken): number {
  const { from, to } = ringLeader(rings);
  return apart(from, to) * (costs.reach + costs.overFresh * takenAlong(cover, fit, from, to).fresh);
}

function reachOf(one: Arrow, from: Vec2): number {
  const [first] = one.path;
  const distance = one.path.length > 1 ? distanceToPath(from, one.path) : first ? apart(first, from) : Infinity;
  return distance - arrowReach(one);
}

/** The line that joins the two rings. */
export function ringLeader({ small, big }: Rings): Segment {
  const way = unit(minus(big.centre, small.centre)) ?? [1, 0];
  return { from: plus(small.centre, way, small.radius), to: plus(big.centre, way, -big.radius) };
}
