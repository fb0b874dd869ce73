import { dot, type Vec3 } from '../../model/index.ts';
import { hasBit, indicesOf, keyOf, union, type Bits } from './bits.ts';
import { hullOf, insideBy } from './hull.ts';
import { floorOf, levelled, piecesIn, type Balance, type Ground } from './ground.ts';
import type { Link } from './links.ts';

/** What is this close to the bench rests on it, mm. */
const ON_BENCH = 3;
/** A tube this close to the bench is laid down on it, mm: it gives way as far in its sleeves, or gets a lath under it. */
const LAID_DOWN = 12;
/** Work stands when its centre of mass is over its footing by this share of its height (common practice, no source). */
const STEADY = 0.1;
/** Steeper than this a bar slides in its sleeve. */
const STEEP = 0.5;
/** What lies on something that slopes by more than 11° slides off it: smooth plastic on glass fibre, friction 0.2 (from memory). */
const LIES = Math.cos(Math.atan(0.2));

/** How work lies in one pose, over a floor. */
export interface Rest {
  /** Bodies that neither the bench nor another body holds; somebody or something must. */
  readonly unheld: readonly Unheld[];
  /** Pieces that hang together by what holds by itself. */
  readonly pieces: readonly Bits[];
}

/** A body that would fall over, or that far (mm) down; and how far its centre of mass lies beside what it stands on, mm. */
export interface Unheld {
  readonly set: Bits;
  readonly tips: boolean;
  readonly gap: number;
  readonly beside: number;
}

/** A set in one pose, as bodies that cannot move against one another but along a level sleeve. */
export interface Lying {
  readonly pieces: readonly Bits[];
  readonly bodies: readonly Body[];
}

interface Body extends Balance {
  readonly set: Bits;
  /** The highest floor that it still rests on. */
  readonly low: number;
}

/** The bodies of a set with a direction up. */
export function bodiesOf(ground: Ground, set: Bits, pose: number): Lying {
  const up = ground.blocking.ways[pose] ?? [0, 0, 1];
  const pieces = piecesIn(ground, set, true);
  const loose = pieces.length === 1 ? [] : ground.links.filter((link) => hasBit(set, link.a) && hasBit(set, link.b) && !pieces.some((piece) => hasBit(piece, link.a) && hasBit(piece, link.b)));
  const bodies = joined(ground, pieces, loose, up).map((body): Body => bodyOf(ground, body, loose, pose, floorOf(ground, body, pose)));
  return { pieces, bodies };
}

/** Which bodies rest on a floor, told as a height along the direction up. */
export const restOver = ({ pieces, bodies }: Lying, floor: number): Rest =>
  ({ pieces, unheld: bodies.filter(({ low, steady }) => !steady || low > floor).map(({ set, low, steady, beside }) => ({ set, tips: !steady, gap: Math.max(0, low - floor), beside })) });

function bodyOf(ground: Ground, set: Bits, loose: readonly Link[], pose: number, own: number): Body {
  const up = ground.blocking.ways[pose] ?? [0, 0, 1];
  const bar = isBar(ground, set);
  const lying = bar && Math.abs(dot(barAxis(ground, set), up)) < STEEP;
  const sleeved = bar && !lying && loose.some(({ is, a }) => is === 'sleeve' && hasBit(set, a));
  return { set, low: own - (lying ? LAID_DOWN : ON_BENCH), ...(sleeved ? SLEEVED : balanceOf(ground, set, pose, own)) };
}

/** Joins bodies until no two hold each other any more. */
function joined(ground: Ground, pieces: readonly Bits[], loose: readonly Link[], up: Vec3): readonly Bits[] {
  let bodies = pieces;
  for (let met = true; met;) {
    met = false;
    const pair = pairThatHolds(ground, bodies, loose, up);
    if (pair !== null) {
      const [one, other] = pair;
      bodies = [...bodies.filter((body) => body !== one && body !== other), union(one, other)];
      met = true;
    }
  }
  return bodies;
}

function pairThatHolds(ground: Ground, bodies: readonly Bits[], loose: readonly Link[], up: Vec3): readonly [Bits, Bits] | null {
  const at = (index: number): Bits | undefined => bodies.find((body) => hasBit(body, index));
  for (const link of loose) {
    const [one, other] = [at(link.a), at(link.b)];
    if (one === undefined || other === undefined || one === other) continue;
    const between = loose.filter(({ a, b }) => (hasBit(one, a) && hasBit(other, b)) || (hasBit(other, a) && hasBit(one, b)));
    if (hold(ground, one, other, between, up)) return [one, other];
  }
  return null;
}

function hold(ground: Ground, one: Bits, other: Bits, between: readonly Link[], up: Vec3): boolean {
  if (between.some(({ is, free }) => is === 'lay' && free.some((way) => Math.abs(dot(way, up)) > LIES))) return true;
  const level = between.filter(({ is, free }) => (is === 'sleeve' || is === 'wrap') && free.every((way) => Math.abs(dot(way, up)) < STEEP));
  if (level.length === 0) return false;
  return isBar(ground, one) || isBar(ground, other) || new Set(level.map(({ a }) => a)).size > 1;
}

/** One bar by itself turns in its sleeve and stays what it is. */
function isBar(ground: Ground, body: Bits): boolean {
  const [first = 0, second] = indicesOf(body);
  const part = ground.units.parts.get(ground.units.all[first]?.parts[0] ?? '');
  return second === undefined && part?.shape.form === 'tube';
}

type Place = readonly [number, number];

/** A bar that a sleeve holds upright. */
const SLEEVED: Balance = { steady: true, beside: 0 };

function balanceOf(ground: Ground, body: Bits, pose: number, own: number): Balance {
  const key = `${pose} ${keyOf(body)}`;
  const known = ground.balances.get(key) ?? balanceNow(ground, body, pose, own);
  ground.balances.set(key, known);
  return known;
}

function balanceNow(ground: Ground, body: Bits, pose: number, own: number): Balance {
  const up = ground.blocking.ways[pose] ?? [0, 0, 1];
  const [east, north] = levelled(up);
  const centre = centreOf(ground, body);
  const ring = hullOf(placesUnder(ground, body, pose, own + ON_BENCH));
  const at: Place = [dot(centre, east), dot(centre, north)];
  const inside = insideBy(ring, at);
  return { steady: inside > STEADY * (dot(centre, up) - own), beside: inside >= 0 ? 0 : awayFrom(ring, at) };
}

const barAxis = (ground: Ground, body: Bits): Vec3 => {
  const [first = 0] = indicesOf(body);
  const pose = ground.units.parts.get(ground.units.all[first]?.parts[0] ?? '')?.pose ?? [];
  return [pose[0] ?? 0, pose[1] ?? 0, pose[2] ?? 0];
};

/** The centre of mass. */
function centreOf({ mass, middles }: Ground, body: Bits): Vec3 {
  let [x, y, z, sum] = [0, 0, 0, 0];
  for (const index of indicesOf(body)) {
    const own = mass[index] ?? 0;
    const [ux, uy, uz] = middles[index] ?? [0, 0, 0];
    x += own * ux;
    y += own * uy;
    z += own * uz;
    sum += own;
  }
  return sum === 0 ? [0, 0, 0] : [x / sum, y / sum, z / sum];
}

function placesUnder({ lows, corners }: Ground, body: Bits, pose: number, under: number): readonly Place[] {
  const places: Place[] = [];
  for (const index of indicesOf(body)) {
    if ((lows[pose]?.[index] ?? 0) > under) continue;
    const own = corners[pose]?.[index] ?? new Float64Array();
    for (let at = 0; at < own.length; at += 3) if ((own[at + 2] ?? 0) <= under) places.push([own[at] ?? 0, own[at + 1] ?? 0]);
  }
  return places;
}

/** How far a place lies from the nearest edge of a ring, or from a line or a place that is all of it, mm. */
const awayFrom = (ring: readonly Place[], [x, y]: Place): number => Math.min(...ring.map(([ax, ay], index) => {
  const [bx, by] = ring[(index + 1) % ring.length] ?? [ax, ay];
  const square = (bx - ax) ** 2 + (by - ay) ** 2;
  const along = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square));
  return Math.hypot(ax + along * (bx - ax) - x, ay + along * (by - ay) - y);
}));
