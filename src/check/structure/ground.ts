import { placed, type Vec2, type Vec3 } from '../../model/index.ts';
import { onBar, lengthOfBar, type BarLine, type Skeleton } from './skeleton.ts';

/** What an item stands on: a place on the floor, the bar above it and where on that bar; how it rolls. */
export interface Contact {
  readonly bar: string;
  /** On the bar, mm from its beginning. */
  readonly at: number;
  readonly place: Vec3;
  /** Height of the lowest point over the origin, mm. */
  readonly low: number;
  /** A castor's wheel may swivel so far inwards, mm. */
  readonly trail: number;
  readonly rolls: 'fixed' | 'braked' | 'free';
}

/** Parts whose lowest points are level within this rest on the floor together, mm. */
const LEVEL = 1;

/** The lowest points of feet, caps, bars and rings, as far as they reach the floor. */
export function contactsOf(skeleton: Skeleton): readonly Contact[] {
  const all = [...footContacts(skeleton), ...skeleton.bars.flatMap(endContacts), ...capContacts(skeleton), ...ringContacts(skeleton)];
  const floor = Math.min(...all.map(({ low }) => low));
  return all.filter(({ low }) => low <= floor + LEVEL);
}

const still = { trail: 0, rolls: 'fixed' } as const;

function footContacts({ model, bars }: Skeleton): readonly Contact[] {
  return model.connections.flatMap((held): readonly Contact[] => {
    if (held.is !== 'foot') return [];
    const part = model.parts.find(({ id }) => id === held.foot);
    const bar = bars.find(({ id }) => id === held.bar);
    if (part?.shape.form !== 'fitting' || bar === undefined) return [];
    const { fitting } = part.shape;
    const end = placed(part.pose, [0, 0, 0]);
    const below = fitting.is === 'castor' ? fitting.height : fitting.is === 'foot-plate' ? fitting.thickness : 0;
    const rolling = fitting.is === 'castor' ? { trail: fitting.trail, rolls: fitting.brake ? 'braked' as const : 'free' as const } : still;
    return [{ bar: bar.id, at: nearerEnd(bar, end), place: end, low: end[2] - below, ...rolling }];
  });
}

function nearerEnd(bar: BarLine, at: Vec3): number {
  const length = lengthOfBar(bar);
  const far = (place: Vec3): number => Math.hypot(place[0] - at[0], place[1] - at[1], place[2] - at[2]);
  return far(bar.from) < far(bar.to) ? 0 : length;
}

/** The ends of a bare tube, upright or lying. */
function endContacts(bar: BarLine): readonly Contact[] {
  const lying = Math.hypot(bar.along[0], bar.along[1]);
  return [0, lengthOfBar(bar)].map((at) => {
    const place = onBar(bar, at);
    return { bar: bar.id, at, place, low: place[2] - (lying * bar.outside) / 2, ...still };
  });
}

/** A cap wider than its tube lifts the tube off the floor. */
function capContacts({ model, bars }: Skeleton): readonly Contact[] {
  return model.connections.flatMap((held): readonly Contact[] => {
    if (held.is !== 'cap') return [];
    const part = model.parts.find(({ id }) => id === held.cap);
    const bar = bars.find(({ id }) => id === held.bar);
    if (part?.shape.form !== 'fitting' || part.shape.fitting.is !== 'end-cap' || bar === undefined) return [];
    const place = placed(part.pose, [0, 0, 0]);
    const lying = Math.hypot(bar.along[0], bar.along[1]);
    return [{ bar: bar.id, at: nearerEnd(bar, place), place, low: place[2] - (lying * part.shape.fitting.diameter) / 2, ...still }];
  });
}

/** Both ends of a lying sleeve. */
function ringContacts({ model, bars }: Skeleton): readonly Contact[] {
  return bars.flatMap((bar) => bar.holds.filter(({ by }) => by === 'sleeve').flatMap(({ joint, at }) => {
    const part = model.parts.find(({ id }) => id === joint);
    const ring = part === undefined ? null : ringOf(part);
    const lying = Math.hypot(bar.along[0], bar.along[1]);
    if (ring === null || lying < 0.5) return [];
    return ring.reaches.map((reach) => {
      const [along, place] = [at + reach, onBar(bar, at + reach)];
      return { bar: bar.id, at: along, place, low: place[2] - ring.diameter / 2, ...still };
    });
  }));
}

interface Ring { readonly diameter: number; readonly reaches: readonly [number, number] }

/** Either way along the bar as far as its shorter end: a joint may sit either way round. */
function ringOf({ shape }: Skeleton['model']['parts'][number]): Ring | null {
  if (shape.form === 'joint') return { diameter: shape.joint.sleeveDiameter, reaches: bothWays(shape.joint.sleeveAbove, shape.joint.sleeveBelow) };
  if (shape.form !== 'ported-joint') return null;
  const sleeve = shape.joint.ports.find((port) => port.is === 'sleeve');
  return sleeve?.is === 'sleeve' ? { diameter: shape.joint.sleeveDiameter, reaches: bothWays(sleeve.above, sleeve.below) } : null;
}

const bothWays = (above: number, below: number): readonly [number, number] => [-Math.min(above, below), Math.min(above, below)];

/** An edge that an item may tip over: a point on it, the way out and along, unit vectors in plan. */
export interface Edge {
  readonly on: Vec2;
  readonly out: Vec2;
}

/** The edges round all contacts, wheels swivelled inwards as far as they go; none where they lie in one line. */
export function edgesOf(contacts: readonly Contact[]): readonly Edge[] {
  const mean = (axis: 0 | 1): number => contacts.reduce((sum, { place }) => sum + place[axis], 0) / Math.max(1, contacts.length);
  const [x, y] = [mean(0), mean(1)];
  const hull = hullOf(contacts.map(({ place, trail }): Vec2 => {
    const [dx, dy] = [place[0] - x, place[1] - y];
    return [place[0] - Math.sign(dx) * Math.min(trail, Math.abs(dx)), place[1] - Math.sign(dy) * Math.min(trail, Math.abs(dy))];
  }));
  if (hull.length < 3) return [];
  return hull.map((on, index) => {
    const next = hull[(index + 1) % hull.length] ?? on;
    const length = Math.hypot(next[0] - on[0], next[1] - on[1]);
    return { on, out: [(next[1] - on[1]) / length, (on[0] - next[0]) / length] };
  });
}

/** The corners of the convex outline, anticlockwise (Andrew's monotone chain). */
function hullOf(points: readonly Vec2[]): readonly Vec2[] {
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (list: readonly Vec2[]): readonly Vec2[] => list.reduce<readonly Vec2[]>((kept, at) => [...trimmed(kept, at), at], []);
  const [lower, upper] = [chain(sorted), chain(sorted.toReversed())];
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function trimmed(kept: readonly Vec2[], at: Vec2): readonly Vec2[] {
  const [a, b] = kept.slice(-2);
  if (a === undefined || b === undefined) return kept;
  const turn = (b[0] - a[0]) * (at[1] - a[1]) - (b[1] - a[1]) * (at[0] - a[0]);
  return turn <= 1e-6 ? trimmed(kept.slice(0, -1), at) : kept;
}

/** How far inside an edge a place lies, mm; below 0 outside. */
export const insideEdge = ({ on, out }: Edge, [x, y]: readonly [number, number, ...unknown[]]): number => (on[0] - x) * out[0] + (on[1] - y) * out[1];
