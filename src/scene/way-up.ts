import { chained, moved, placed, times, turned, type Connection, type Model, type Solids, type Vec3 } from '../model/index.ts';
import { PARTS } from '../parts/facts.ts';
import type { Step } from '../plan/index.ts';
import { turnedBy } from './kit/directions.ts';
import { nearestOf } from './kit/nearest.ts';
import { stageHand, type StageHand } from './kit/stage.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import type { Scene, SceneBody } from './types.ts';

/** What is put together in a step and could be put together another way round: a joint with the bar that goes into it and what holds the bar's other end, or all that the step brings where that is whole. */
export interface WayUp {
  readonly right: Scene;
  /** The same with the part nearest to the eye a quarter turn off about its bar; that part is tinted in both. */
  readonly wrong: Scene;
}

type Socket = Extract<Connection, { is: 'socket' }>;

/** The right way round and a wrong one of the joint nearest to the eye of those that a step brings and that their bars leave free to turn; null where there is none. */
export function wayUpScenes(model: Model, step: Step, solids: Solids): WayUp | null {
  const hand = stageHand(model, step, solids);
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  const free = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.closes : [])).filter((each): each is Socket =>
    each.is === 'socket' && fresh.includes(each.joint) && PARTS[hand.part(each.joint).kind].hasWayUp === true);
  const nearest = nearestOf(hand, free.map(({ joint }) => joint));
  const own = free.find(({ joint }) => joint === nearest);
  if (own === undefined) return null;
  const shown = fresh.includes(own.bar) ? fresh : [own.bar, ...jointsAt(model, own.bar).filter((id) => id === nearest || step.present.includes(id))];
  const right = shown.map((id): SceneBody => hand.body(id, id === nearest ? 'new' : 'present'));
  const scene = (id: string, bodies: readonly SceneBody[]): Scene => ({ id: `${id}:${step.number}`, bodies, marks: [], view: STANDARD_VIEW });
  return { right: scene('right', right), wrong: scene('wrong', right.map((body) => (body.id === nearest ? quarterOff(hand, own, body) : body))) };
}

/** The joints that a bar goes into. */
const jointsAt = ({ connections }: Model, bar: string): readonly string[] =>
  connections.flatMap((each) => (each.is === 'socket' && each.bar === bar ? [each.joint] : []));

/** A joint turned by a quarter about the bar that goes into it. */
function quarterOff(hand: StageHand, { bar, joint }: Socket, body: SceneBody): SceneBody {
  const along: Vec3 = turnedBy(hand.pose(bar), [1, 0, 0]);
  const at = placed(hand.pose(joint), [0, 0, 0]);
  return { ...body, pose: chained(moved(at), turned(along, Math.PI / 2), moved(times(at, -1)), body.pose) };
}
