import { chained, dot, jointPorts, minus, moved, placed, plus, times, turned, undone, unit, type Connection, type JointPorts, type Model, type Pose, type Solids, type Vec3 } from '../model/index.ts';
import { PARTS } from '../parts/facts.ts';
import type { Step } from '../plan/index.ts';
import { turnedBy } from './kit/directions.ts';
import { nearestOf } from './kit/nearest.ts';
import { longEnd, longEndTold } from './kit/sleeve-ends.ts';
import { stageHand, type StageHand } from './kit/stage.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import type { Scene, SceneBody } from './types.ts';

/** What is put together in a step and could be put together another way round: a joint with the bar that goes into it and what holds the bar's other end, or all that the step brings where that is whole. */
export interface WayUp {
  readonly right: Scene;
  /** The same with the part nearest to the eye another way round; that part is tinted in all. */
  readonly wrong: readonly Scene[];
}

type Port = Extract<JointPorts['ports'][number], { is: 'socket' }>;
type Socket = Extract<Connection, { is: 'socket' }>;

/** A bar is shown so long, so that joints are seen large, mm. */
const SHORT = 150;
/** From a joint's middle to the dimension of its long end, mm. */
const AWAY = 62;

/**
 * The right way round and wrong ones of the joint nearest to the eye of those that a step brings and that their bars leave free to
 * turn: a quarter turn off; and on with its other socket, or half turned where it has none, so that the long end of its sleeve comes
 * where the short one must be. Null where there is none.
 */
export function wayUpScenes(model: Model, step: Step, solids: Solids): WayUp | null {
  const hand = stageHand(model, step, solids);
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  const free = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.closes : [])).filter((each): each is Socket =>
    each.is === 'socket' && fresh.includes(each.joint) && PARTS[hand.part(each.joint).kind].hasWayUp === true);
  const nearest = nearestOf(hand, free.map(({ joint }) => joint));
  const own = free.find(({ joint }) => joint === nearest);
  if (own === undefined) return null;
  const shown = fresh.includes(own.bar) ? fresh : [own.bar, ...jointsAt(model, own.bar).filter((id) => id === nearest || step.present.includes(id))];
  const right = shortened(model, hand, own, shown).map((body): SceneBody => ({ ...body, look: body.id === nearest ? 'new' : 'present' }));
  const away = times(unit(minus(placed(hand.pose(own.joint), [0, 0, 0]), placed(hand.pose(own.bar), [0, 0, 0]))), AWAY);
  const scene = (id: string, pose: Pose, isMeasured: boolean): Scene => ({
    id: `${id}:${step.number}`, view: STANDARD_VIEW,
    bodies: right.map((body) => (body.id === nearest ? { ...body, pose } : body)),
    marks: isMeasured ? longEndTold({ shape: hand.part(own.joint).shape, pose }, away) : [],
  });
  const swapped = endsSwapped(hand, own) ?? halfTurned(hand, own);
  return {
    right: scene('right', hand.pose(own.joint), swapped !== null),
    wrong: [scene('wrong', quarterOff(hand, own), false), ...(swapped === null ? [] : [scene('swapped', swapped, true)])],
  };
}

/** The joints that a bar goes into. */
const jointsAt = ({ connections }: Model, bar: string): readonly string[] =>
  connections.flatMap((each) => (each.is === 'socket' && each.bar === bar ? [each.joint] : []));

/**
 * What is shown, with bars cut short: one that ends in no joint shown keeps so much from the joint that it goes into; where one bar
 * alone holds two joints, the other joint is drawn nearer to the told one.
 */
function shortened(model: Model, hand: StageHand, { joint }: Socket, shown: readonly string[]): readonly SceneBody[] {
  const bars = shown.filter((id) => hand.part(id).shape.form === 'tube');
  return shown.reduce<readonly SceneBody[]>((bodies, id) => {
    const { shape } = hand.part(id);
    const joints = jointsAt(model, id).filter((each) => shown.includes(each));
    const held = joints.includes(joint) ? joint : joints[0];
    if (shape.form !== 'tube' || held === undefined || shape.length <= SHORT || (joints.length > 1 && bars.length > 1)) return bodies;
    const along = turnedBy(hand.pose(id), [1, 0, 0]);
    const end = Math.sign(dot(along, minus(placed(hand.pose(held), [0, 0, 0]), placed(hand.pose(id), [0, 0, 0]))));
    const spare = shape.length - SHORT;
    const piece = hand.prop({ tool: `piece-of-${id}` }, { ...shape, length: SHORT, holes: [] }, chained(hand.pose(id), moved([(end * spare) / 2, 0, 0])), 'present');
    const others = joints.filter((each) => each !== held);
    return bodies.map((body) => (body.id === id ? piece : others.includes(body.id) ? { ...body, pose: chained(moved(times(along, end * spare)), body.pose) } : body));
  }, shown.map((id) => hand.body(id, 'present')));
}

/** Where a joint stands turned by a quarter about the bar that goes into it. */
const quarterOff = (hand: StageHand, own: Socket): Pose => turnedAbout(hand, own, Math.PI / 2);

/** Where a joint stands turned by a half about its bar, so that the long end of a sleeve across that bar comes where the short one must be; null where its ends are alike, or the sleeve lies along the bar. */
function halfTurned(hand: StageHand, own: Socket): Pose | null {
  const pose = hand.pose(own.joint);
  const long = longEnd({ shape: hand.part(own.joint).shape, pose });
  const along = turnedBy(hand.pose(own.bar), [1, 0, 0]);
  return long === null || Math.abs(dot(unit(minus(long.rim, long.middle)), along)) > SQUARE ? null : turnedAbout(hand, own, Math.PI);
}

function turnedAbout(hand: StageHand, { bar, joint }: Socket, angle: number): Pose {
  const along: Vec3 = turnedBy(hand.pose(bar), [1, 0, 0]);
  const at = placed(hand.pose(joint), [0, 0, 0]);
  return chained(moved(at), turned(along, angle), moved(times(at, -1)), hand.pose(joint));
}

/** Where a joint stands that has its bar in another socket of the same depth, the one that is left over where that one was; null where it has none, or the ends of its sleeve are alike. */
function endsSwapped(hand: StageHand, { joint, out }: Socket): Pose | null {
  const { shape, pose: own } = hand.part(joint);
  if (longEnd({ shape, pose: own }) === null) return null;
  const taken = turnedBy(undone(own), out);
  const sockets = jointPorts(shape)?.ports.filter((port): port is Port => port.is === 'socket') ?? [];
  const held = sockets.find(({ axis }) => Math.abs(dot(axis, taken) - 1) < SQUARE);
  const other = held && sockets.find(({ axis, stop, depth }) => Math.abs(dot(axis, held.axis)) < SQUARE && stop === held.stop && depth === held.depth);
  return held === undefined || other === undefined ? null : chained(hand.pose(joint), turned(unit(plus(held.axis, other.axis)), Math.PI));
}

/** Directions are alike, or square to each other, to so much. */
const SQUARE = 1e-6;
