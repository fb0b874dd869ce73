import { capFor, cappedTubes, cross, dot, jointPorts, lengthOf, minus, placed, plus, times, unit, type Connection, type Model, type Solids, type Vec3 } from '../model/index.ts';
import type { Step } from '../plan/index.ts';
import { SCENES } from '../work/scenes.ts';
import { turnedBy } from './kit/directions.ts';
import { sleeveReach } from './kit/sleeve-ends.ts';
import { viewOf } from './kit/stand.ts';
import { stageHand, type StageHand } from './kit/stage.ts';
import { OUT } from './plumb/plumb.ts';
import type { SceneBody, View } from './types.ts';

/** The side of the work that lies on top, before its sleeves are fixed to its posts: square where both its diagonals are equal. Lengths in mm. */
export interface Square {
  readonly bodies: readonly SceneBody[];
  /** Its outer corners in their order round it: along one post, then back along the other. */
  readonly corners: readonly [Vec3, Vec3, Vec3, Vec3];
  /** How long each diagonal is, from outer corner to outer corner. */
  readonly diagonal: number;
  /** By how much one may be longer than the other: then the posts lean by no more than a plumb line allows. */
  readonly unequal: number;
  /** As the step is seen; and from over the side, its longer direction across the paper. */
  readonly view: View;
  readonly over: View;
}

type Sleeve = Extract<Connection, { readonly is: 'sleeve' }>;

/** The cosine from which directions are alike, and from which a side lies: it is drilled from over it. */
const ALIKE = 0.999;
const LIES = 0.7;
/** Sleeves whose middles are less apart along their posts belong to one bar, and diagonals that differ by less are equal, mm. */
const SAME = 1;

/** A place along a post: where its joint's middle is, and where its sleeve begins and ends, mm from the scene's origin along the post. */
interface Station {
  readonly middle: number;
  readonly from: number;
  readonly to: number;
}

/** What a step's drilling fixes, to be measured first; null where it fixes no sleeves on two posts of a side that lies. */
export function squareOf(model: Model, step: Step, solids: Solids): Square | null {
  if (SCENES[step.action]?.fixesSquare !== true) return null;
  const hand = stageHand(model, step, solids);
  const pins = model.connections.flatMap((each) => (each.is === 'pin' && step.drillsFor.includes(each.pin) ? [each] : []));
  const there = new Set(step.present);
  const sleeves = model.connections.filter((each): each is Sleeve => each.is === 'sleeve' && there.has(each.bar) && there.has(each.joint));
  const posts = [...new Set(sleeves.flatMap(({ bar, joint }) => (pins.some(({ holds }) => holds.includes(bar) && holds.includes(joint)) ? [bar] : [])))];
  const [first, pin] = [posts[0], pins[0]];
  if (first === undefined || pin === undefined) return null;
  const out = turnedBy(hand.pose(pin.pin), [0, 0, 1]);
  const along = turnedBy(hand.pose(first), [1, 0, 0]);
  if (Math.abs(out[2]) < LIES || posts.some((id) => Math.abs(dot(turnedBy(hand.pose(id), [1, 0, 0]), along)) < ALIKE)) return null;
  const across = unit(cross(out, along));
  const placeOf = (id: string): number => dot(placed(hand.pose(id), [0, 0, 0]), across);
  const sorted = posts.toSorted((a, b) => placeOf(a) - placeOf(b));
  const [near, far] = [sorted[0], sorted.at(-1)];
  if (near === undefined || far === undefined || near === far) return null;
  const corners = cornersOf({ model, hand, sleeves, along, across }, near, far);
  if (corners === null) return null;
  const [one, other] = [lengthOf(minus(corners[2], corners[0])), lengthOf(minus(corners[3], corners[1]))];
  if (Math.abs(one - other) >= SAME) return null;
  return { bodies: step.present.map((id) => hand.body(id, sorted.includes(id) ? 'new' : 'present')), corners, diagonal: one, unequal: unequalOf(corners, one), view: viewOf(model, step), over: overOf(out, corners) };
}

/** Sides of a and b that lean by an angle have diagonals d that differ by 2 a b · angle / d (cosine rule, to the first order). Whole mm. */
function unequalOf([first, second, third]: Square['corners'], diagonal: number): number {
  const [along, across] = [lengthOf(minus(second, first)), lengthOf(minus(third, second))];
  return Math.max(OUT.least, Math.floor((2 * along * across * OUT.share) / diagonal));
}

/** What corners are found from. */
interface Side {
  readonly model: Model;
  readonly hand: StageHand;
  readonly sleeves: readonly Sleeve[];
  readonly along: Vec3;
  readonly across: Vec3;
}

/** The outer corners of the outermost sleeves that stand opposite each other on two posts; where each has but one, from that to the posts' free ends. Null where there are none. */
function cornersOf(side: Side, near: string, far: string): Square['corners'] | null {
  const [own, others] = [stationsOf(side, near), stationsOf(side, far)];
  const isOpposite = (one: Station, other: Station): boolean => Math.abs(one.middle - other.middle) < SAME;
  const [first, last] = [own.find((one) => others.some((other) => isOpposite(one, other))), own.findLast((one) => others.some((other) => isOpposite(one, other)))];
  if (first === undefined || last === undefined) return null;
  const ends = first === last ? fromSleeveToEnd(side, first, near, far) : [first.from, last.to] as const;
  if (ends === null) return null;
  const outer = Math.max(...side.sleeves.filter(({ bar }) => bar === near || bar === far).map(({ joint }) => jointPorts(side.hand.part(joint).shape)?.outside ?? 0)) / 2;
  const corner = (id: string, place: number, way: number): Vec3 => {
    const middle = placed(side.hand.pose(id), [0, 0, 0]);
    return plus(plus(middle, times(side.along, place - dot(middle, side.along))), times(side.across, way * outer));
  };
  return [corner(near, ends[0], -1), corner(near, ends[1], -1), corner(far, ends[1], 1), corner(far, ends[0], 1)];
}

/** The sleeves on a post, from its one end on. */
function stationsOf({ hand, sleeves, along }: Side, post: string): readonly Station[] {
  return sleeves.filter(({ bar }) => bar === post).map(({ joint }): Station => {
    const own = { shape: hand.part(joint).shape, pose: hand.pose(joint) };
    const middle = dot(placed(own.pose, [0, 0, 0]), along);
    return { middle, from: middle - sleeveReach(own, along), to: middle + sleeveReach(own, times(along, -1)) };
  }).toSorted((a, b) => a.middle - b.middle);
}

/** From a sleeve's outer end to the ends of two posts on its other side, with their caps; null where these are not equally far. */
function fromSleeveToEnd(side: Side, { middle, from, to }: Station, ...posts: readonly [string, string]): readonly [number, number] | null {
  const ends = posts.map((id) => endsOf(side, id));
  const way = ends.every(([low, high]) => high - middle > middle - low) ? 1 : -1;
  const [one, other] = ends.map(([low, high]) => (way > 0 ? high : low));
  if (one === undefined || other === undefined || Math.abs(one - other) >= SAME) return null;
  return way > 0 ? [from, one] : [one, to];
}

/** Where a post begins and ends, with the caps of ends that stay open. */
function endsOf({ model, hand, along }: Side, id: string): readonly [number, number] {
  const { shape } = hand.part(id);
  const pose = hand.pose(id);
  if (shape.form !== 'tube') return [0, 0];
  const cap = capFor(model.kit, shape).thickness;
  const capped = cappedTubes(model).get(id) ?? [];
  const ends = ([-1, 1] as const).map((end) => dot(placed(pose, [end * (shape.length / 2 + (capped.includes(end) ? cap : 0)), 0, 0]), along));
  return [Math.min(...ends), Math.max(...ends)];
}

/** From over a side, its longer direction across the paper. */
function overOf(out: Vec3, [first, second, third]: Square['corners']): View {
  const towardsEye = times(out, Math.sign(out[2]));
  const [along, across] = [minus(second, first), minus(third, second)];
  const longer = lengthOf(along) > lengthOf(across) ? along : across;
  return { towardsEye, up: Math.abs(longer[0]) > Math.abs(longer[1]) ? [0, 1, 0] : [-1, 0, 0] };
}
