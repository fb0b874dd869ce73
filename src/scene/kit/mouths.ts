import { placed, plus, times, type Connection, type Part, type Vec3 } from '../../model/index.ts';
import type { Slide } from './on-the-way.ts';
import { boxRound } from './extent.ts';
import type { StageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';

/** A slide as it is drawn: the way it goes (a unit vector) and how far off it stands, mm, in the scene. */
export interface Going {
  readonly hand: StageHand;
  readonly slide: Slide;
  readonly way: Vec3;
  readonly off: number;
}

/** Where something joins: from where its leading place is drawn to where that ends up; and how wide the mouth is, mm. */
export interface Mouth {
  readonly path: readonly [Vec3, Vec3];
  readonly wide: number;
  /** How far what comes reaches back from the leading place, mm; not told where it is large. */
  readonly back?: number;
  /** Where a mouth that takes a bar's end opens to (a unit vector). */
  readonly opens?: Vec3;
}

/** White between an arrow and what it comes from or goes to, mm. */
const GAP = 10;
/** No more arrows than these: those nearest to the eye. */
const MOST = 4;
/** An arrow shorter than this says nothing, mm. */
const SHORTEST = 20;

/** The ways into the mouths of all that a slide joins, those nearest to the eye first. */
export function mouthsOf(going: Going): readonly Mouth[] {
  const mouths = going.slide.closes.flatMap((connection) => mouthOf(going, connection));
  const [ex, ey, ez] = STANDARD_VIEW.towardsEye;
  const depth = ({ path: [, [x, y, z]] }: Mouth): number => x * ex + y * ey + z * ez;
  return mouths.filter(({ path: [from, to] }, index) => lengthBetween(from, to) > SHORTEST && !mouths.slice(0, index).some((other) => isNear(other.path[1], to)))
    .sort((a, b) => depth(b) - depth(a)).slice(0, MOST);
}

const lengthBetween = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Mouths of one place need one arrow. */
const isNear = (a: Vec3, b: Vec3): boolean => lengthBetween(a, b) < 60;

function mouthOf(going: Going, connection: Connection): readonly Mouth[] {
  const { hand, slide } = going;
  const comes = (id: string): boolean => slide.parts.includes(id);
  const at = (id: string): Vec3 => placed(hand.pose(id), [0, 0, 0]);
  switch (connection.is) {
    case 'socket': return socketMouth(going, connection);
    case 'sleeve': return comes(connection.bar) ? throughSleeve(going, connection.bar) : overBar(going, connection);
    case 'pin': return pinMouth(going, connection.pin);
    case 'panel-pin': return pinMouth(going, connection.pin);
    case 'lay': return [home(going, at(connection.bar), LAID)];
    case 'cap': return [small(going, connection.cap)];
    case 'foot': return [small(going, connection.foot)];
    case 'bracket': return [small(going, connection.bracket)];
    case 'hinge': return [small(going, connection.hinge)];
    case 'hook':
    case 'wrap': return [];
  }
}

/** What is laid on a bar is as wide as it is long. */
const LAID = 200;

/** From where a place is drawn to where it ends up. */
const home = ({ way, off }: Going, at: Vec3, wide: number): Mouth => ({ path: [plus(at, times(way, -off)), at], wide });

/** A small part comes as a whole: what is enlarged shows all of it. */
function small(going: Going, id: string): Mouth {
  const { hand, way } = going;
  const at = placed(hand.pose(id), [0, 0, 0]);
  const { min, max } = boxRound([hand.body(id, 'new')]);
  const back = [0, 1, 2].reduce((sum, axis) => sum + Math.max(0, -(way[axis] ?? 0) * (((way[axis] ?? 0) > 0 ? min[axis] : max[axis]) ?? 0) + (way[axis] ?? 0) * (at[axis] ?? 0)), 0);
  return { ...home(going, at, wideOf(hand.part(id))), back };
}

const wideOf = ({ shape }: Part): number => {
  switch (shape.form) {
    case 'tube': return shape.outside;
    case 'fitting': return shape.outside;
    default: return LAID;
  }
};

/** The end of a bar that is nearer to a place, and half its length. */
function endNear(hand: StageHand, bar: string, place: Vec3): Vec3 {
  const { shape } = hand.part(bar);
  const half = shape.form === 'tube' ? shape.length / 2 : 0;
  const ends = [-half, half].map((x) => placed(hand.pose(bar), [x, 0, 0]));
  return ends.reduce((best, end) => (lengthBetween(end, place) < lengthBetween(best, place) ? end : best));
}

/** A bar's end goes from before the mouth into it; or the mouth goes over the end. */
function socketMouth(going: Going, { bar, joint, depth }: Extract<Connection, { is: 'socket' }>): readonly Mouth[] {
  const { hand, slide, way, off } = going;
  const end = endNear(hand, bar, placed(hand.pose(joint), [0, 0, 0]));
  const wide = wideOf(hand.part(bar));
  // Both the end and the mouth lie on the way: what comes is drawn off by `off`, and reaches the mouth `depth` before its place.
  const mouth = plus(end, times(way, slide.parts.includes(bar) ? -depth : depth));
  return slide.parts.includes(bar)
    ? [{ path: [plus(end, times(way, GAP - off)), plus(mouth, times(way, -GAP))], wide, opens: times(way, -1) }]
    : [{ path: [plus(mouth, times(way, GAP - off)), plus(end, times(way, -GAP))], wide, opens: way }];
}

/** An arrow beside a bar, not on it, mm. */
const BESIDE_BAR: Vec3 = [0, 0, 75];
/** The share of the way at which the arrow beside a bar ends. */
const ARROW_END = 0.25;

/** Beside the bar, from its trailing end to nearly where that ends up. */
function throughSleeve({ hand, way, off }: Going, bar: string): readonly Mouth[] {
  const { shape } = hand.part(bar);
  const trailing = plus(placed(hand.pose(bar), [0, 0, 0]), times(way, shape.form === 'tube' ? -shape.length / 2 : 0));
  return [{ path: [plus(plus(trailing, times(way, -off)), BESIDE_BAR), plus(plus(trailing, times(way, -off * ARROW_END)), BESIDE_BAR)], wide: LAID }];
}

/** Before the joint, along the bar that goes through it. */
function overBar({ hand, way, off }: Going, { joint }: Extract<Connection, { is: 'sleeve' }>): readonly Mouth[] {
  const place = placed(hand.pose(joint), [0, 0, 0]);
  const from = plus(place, times(way, -off));
  return [{ path: [plus(from, times(way, OVER_JOINT)), plus(from, times(way, Math.max(OVER_JOINT + SHORTEST * 2, off * (1 - ARROW_END))))], wide: LAID }];
}

/** An arrow begins this far before a joint's middle, mm. */
const OVER_JOINT = 50;

/** Where an arrow behind a pin's head begins and ends, and the way to go at which it stands before its point instead, mm. */
const BEHIND = { from: 75, to: 20, least: 30 };

function pinMouth({ hand, way, off }: Going, pin: string): readonly Mouth[] {
  const { shape } = hand.part(pin);
  const place = placed(hand.pose(pin), [0, 0, 0]);
  const tip = shape.form === 'pin' ? shape.length : 0;
  // A pin that is drawn nearly in its hole is pushed from behind its head.
  const [from, to] = off - tip < BEHIND.least ? [-off - BEHIND.from, -off - BEHIND.to] : [tip - off, -2];
  return [{ path: [plus(place, times(way, from)), plus(place, times(way, to))], wide: LAID }];
}
