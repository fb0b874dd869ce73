import type { Box3, Vec2 } from '../../model/index.ts';
import { hullOf, insideBy } from '../found/hull.ts';
import type { Carrier } from './carriers.ts';

/** A block under a carrier: so long along it, its middle at `at`, mm. */
export interface Place {
  readonly carrier: Carrier;
  readonly at: Vec2;
  readonly long: number;
}

/** Something that stands or moves where work lies: a block stands clear of it. */
export interface InTheWay {
  readonly part: string;
  readonly box: Box3;
  /** Only for blocks under these parts, where told: what goes through them comes out below. */
  readonly under?: readonly string[];
}

/** Where the mass of work is, over the floor, mm. */
export interface Centre {
  readonly at: Vec2;
  readonly high: number;
}

/** How wide a block is across what lies on it, and how long it is along that, the longest first, mm. */
export const BLOCK_WIDE = 60;
const LONGS = [70, 60, 50, 40, 30];
/** A block stands clear of all but its carrier by so much, and is tried every so many mm. */
const CLEAR = 5;
const EVERY = 10;
/** Work lies steadily when its centre of mass is over its footing by this share of its height (common practice, no source). */
const STEADY = 0.1;

/** A block near each corner of what lies on some carriers, as far out as there is room. */
export function cornerPlaces(carriers: readonly Carrier[], others: readonly InTheWay[]): readonly Place[] {
  const free = carriers.flatMap((carrier) => ([-1, 1] as const).flatMap((end) => outermost(carrier, end, others) ?? []));
  const [wide, deep] = [spanOf(free.map(({ at }) => at[0])), spanOf(free.map(({ at }) => at[1]))];
  const out = ({ at }: Place, [x, y]: Vec2): number => (x * at[0]) / wide + (y * at[1]) / deep;
  const corners = CORNERS.flatMap((corner) => free.toSorted((one, other) => out(other, corner) - out(one, corner)).slice(0, 1));
  return corners.filter((place, index) => !corners.slice(0, index).some((other) => meet(boxOf(place), boxOf(other))));
}

const CORNERS: readonly Vec2[] = [[-1, -1], [1, -1], [1, 1], [-1, 1]];
const spanOf = (values: readonly number[]): number => Math.max(1, Math.max(...values) - Math.min(...values));

/** The place nearest to an end of a carrier that is clear of all else; null where there is none. */
function outermost(carrier: Carrier, end: -1 | 1, others: readonly InTheWay[]): Place | null {
  const { axis, from, to, across } = carrier;
  for (let inwards = 0; inwards <= to - from; inwards += EVERY) {
    for (const long of LONGS.filter((each) => each <= to - from - inwards)) {
      const along = end < 0 ? from + inwards + long / 2 : to - inwards - long / 2;
      const place: Place = { carrier, at: axis === 0 ? [along, across] : [across, along], long };
      if (isFree(place, others)) return place;
    }
  }
  return null;
}

type Span = readonly [number, number];

const boxOf = ({ carrier, at, long }: Place): readonly [Span, Span] => {
  const half = carrier.axis === 0 ? [long / 2, BLOCK_WIDE / 2] as const : [BLOCK_WIDE / 2, long / 2] as const;
  return [[at[0] - half[0], at[0] + half[0]], [at[1] - half[1], at[1] + half[1]]];
};

const meet = (one: readonly [Span, Span], other: readonly [Span, Span]): boolean => ([0, 1] as const).every((axis) => one[axis][0] < other[axis][1] && one[axis][1] > other[axis][0]);

function isFree(place: Place, others: readonly InTheWay[]): boolean {
  const [x, y] = boxOf(place);
  const room: readonly [Span, Span] = [[x[0] - CLEAR, x[1] + CLEAR], [y[0] - CLEAR, y[1] + CLEAR]];
  return !others.some(({ part, box: { min, max }, under }) => !place.carrier.parts.includes(part) && (under === undefined || under.some((id) => place.carrier.parts.includes(id))) && min[2] < place.carrier.under - 1e-3 && meet(room, [[min[0], max[0]], [min[1], max[1]]]));
}

/** Whether work whose mass is there lies on some blocks without falling over. */
export const isSteadyOn = (places: readonly Place[], { at, high }: Centre): boolean => insideBy(hullOf(places.flatMap(endsOf)), at) > STEADY * high;

/** Whether places lie on one line, up to so many mm. */
export const areInLine = (places: readonly Vec2[]): boolean => {
  const [first, ...others] = places;
  if (first === undefined) return true;
  const far = others.reduce((best, place) => (apart(place, first) > apart(best, first) ? place : best), first);
  return others.every(([x, y]) => Math.abs((far[0] - first[0]) * (y - first[1]) - (far[1] - first[1]) * (x - first[0])) <= IN_LINE * apart(far, first));
};

const IN_LINE = 3;
const apart = (one: Vec2, other: Vec2): number => Math.hypot(one[0] - other[0], one[1] - other[1]);

/** Whether the mass of what somebody has in hand on one line of blocks, each under the same way of bars, is between the outermost of them. */
export function isBetween(places: readonly Place[], { at }: Pick<Centre, 'at'>): boolean {
  const [first] = places;
  if (places.length < 2 || first === undefined || !areInLine(places.flatMap(endsOf))) return false;
  const { axis } = first.carrier;
  const ends = places.map((place) => place.at[axis]);
  return Math.min(...ends) < at[axis] && at[axis] < Math.max(...ends);
}

/** A bar touches its block along a line. */
const endsOf = ({ carrier, at, long }: Place): readonly Vec2[] =>
  [-1, 1].map((end): Vec2 => (carrier.axis === 0 ? [at[0] + (end * long) / 2, at[1]] : [at[0], at[1] + (end * long) / 2]));
