import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { arrowReach, type Arrow } from './arrows.ts';
import { takenAlong, takenBy, type Cover } from './cover.ts';
import type { Fit } from '../kit/fit.ts';
import { apart, boxInside, boxOf, boxesOverlap, distanceToSegment, pointInBox, segmentInBox, segmentsCross, segmentsOf, type Segment } from '../kit/geometry.ts';
import type { Place } from './placement.ts';
import type { Disc } from './rings.ts';
import { detail, rim } from './sizes.ts';

/** What is on the paper before the labels come. */
export interface Ground {
  readonly paper: Box;
  readonly fit: Fit;
  readonly cover: Cover;
  readonly arrows: readonly Arrow[];
  readonly discs: readonly Disc[];
  readonly lines: readonly Segment[];
}

/** In mm of distance that one would rather accept. */
const costs = { fresh: 90, body: 8, lines: 45, textOnArrow: 150, textOnLine: 60, lineOverArrow: 40, lineInRing: 120, linesCross: 12 } as const;
/** The same for each mm of a thin line over a body. */
const mmOverBody = 0.4;

/** More ways than this to set one mark are not needed, as long as they are the cheapest. */
const enough = 80;

/** The ways to set one mark, priced only as far as somebody asks: most tries of a layout are given up before. */
export interface Priced {
  /** What the cheapest costs; infinite where there is none. */
  readonly least: () => number;
  /** The cheapest, in order of their price. */
  readonly cheapest: () => Place[];
}

/**
 * The places that keep to the paper and off the rings, with the price of what they cover added. They are priced in the
 * order of their own cost, which the ground only adds to, until those to come cannot be among the cheapest.
 * @param places the cheapest first.
 */
export function onGround(places: Iterable<Place>, ground: Ground): Priced {
  const toCome = places[Symbol.iterator]();
  const shafts = ground.arrows.map(shaftOf);
  const found: Place[] = [];
  const prices: number[] = [];
  let next = toCome.next();
  const price = (wanted: number): void => {
    for (; next.done !== true && !((prices[wanted - 1] ?? Infinity) <= next.value.cost); next = toCome.next()) {
      const place = next.value;
      if (!allowed(place, ground)) continue;
      const cost = place.cost + groundCost(place, ground, shafts);
      found.push({ ...place, cost });
      keepCheapest(prices, cost);
    }
  };
  return {
    least: () => {
      price(1);
      return prices[0] ?? Infinity;
    },
    cheapest: () => {
      price(enough);
      return found.toSorted((a, b) => a.cost - b.cost).slice(0, enough);
    },
  };
}

/** Puts a cost in its place among the cheapest, ascending. */
function keepCheapest(cheapest: number[], cost: number): void {
  if ((cheapest[enough - 1] ?? Infinity) <= cost) return;
  let place = cheapest.length;
  while (place > 0 && (cheapest[place - 1] ?? 0) > cost) place--;
  cheapest.splice(place, 0, cost);
  cheapest.length = Math.min(cheapest.length, enough);
}

function allowed({ box, lines }: Place, { paper, discs }: Ground): boolean {
  if (!boxInside(box, paper, rim)) return false;
  if (!lines.every((s) => pointInBox(s.from, paper, -rim) && pointInBox(s.to, paper, -rim))) return false;
  return discs.every((disc) => !discMeetsBox(disc, box));
}

/** A line may end in a small ring, where its place may lie, but run through no ring. */
function runsThrough(s: Segment, disc: Disc): boolean {
  const ends = [s.from, s.to].filter((end) => apart(end, disc.centre) <= disc.radius).length;
  const mayEnd = disc.radius < detail.least;
  return distanceToSegment(disc.centre, s) < disc.radius && !(mayEnd && ends > 0);
}

function discMeetsBox({ centre, radius }: Disc, box: Box): boolean {
  const x = Math.max(box.x, Math.min(centre[0], box.x + box.width));
  const y = Math.max(box.y, Math.min(centre[1], box.y + box.height));
  return Math.hypot(x - centre[0], y - centre[1]) < radius + 0.5;
}

function groundCost({ box, lines }: Place, ground: Ground, shafts: readonly Shaft[]): number {
  const taken = takenBy(ground.cover, ground.fit, box);
  let cost = taken.fresh * costs.fresh + taken.body * costs.body + taken.lines * costs.lines;
  for (const shaft of shafts) {
    if (shaftMeetsBox(shaft, box)) cost += costs.textOnArrow;
    cost += costs.lineOverArrow * lines.filter((s) => shaft.segments.some((t) => segmentsCross(s, t))).length;
  }
  cost += costs.textOnLine * ground.lines.filter((s) => segmentInBox(s, box)).length;
  for (const s of lines) {
    cost += costs.lineInRing * ground.discs.filter((disc) => runsThrough(s, disc)).length;
    const under = takenAlong(ground.cover, ground.fit, s.from, s.to);
    cost += mmOverBody * apart(s.from, s.to) * (under.fresh + under.body);
  }
  return cost + costs.linesCross * lines.filter((s) => ground.lines.some((t) => segmentsCross(s, t))).length;
}

/** An arrow as what a text must keep off: its line, and how far it reaches to the sides of it. */
interface Shaft {
  readonly segments: readonly Segment[];
  /** Where an arrow of one point stands. */
  readonly alone: Vec2 | null;
  readonly reach: number;
}

const shaftOf = (one: Arrow): Shaft => ({ segments: segmentsOf(one.path), alone: one.path.length === 1 ? one.path[0] ?? null : null, reach: arrowReach(one) });

function shaftMeetsBox({ segments, alone, reach }: Shaft, box: Box): boolean {
  const grown = { x: box.x - reach, y: box.y - reach, width: box.width + 2 * reach, height: box.height + 2 * reach };
  return alone !== null ? boxesOverlap(grown, boxOf([alone], 0.01)) : segments.some((s) => segmentInBox(s, grown));
}
