import { chained, moved, placed, plus, times, undone, type Connection, type Model, type Pose, type Shape, type Solids, type Vec3 } from '../model/index.ts';
import type { Step } from '../plan/index.ts';
import { blindEnds } from './kit/blind-ends.ts';
import { turnedBy } from './kit/directions.ts';
import { nearestOf } from './kit/nearest.ts';
import { longEndTold } from './kit/sleeve-ends.ts';
import { partsShown } from './kit/parts-shown.ts';
import { stageHand, type StageHand } from './kit/stage.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import type { Rolled } from './rolled/history.ts';
import { kindsOf } from './rolled/rolled-scenes.ts';
import type { Mark, Scene, SceneBody } from './types.ts';

type Socket = Extract<Connection, { is: 'socket' }>;

/** How much of a bar is shown beyond its socket, and how far the one that comes stands off, mm. */
const SHOWN = { beyond: 46, off: 40 } as const;

/** A joint that takes a bar in, the bar, and a place on the end of it that is shown. */
export interface EnteredJoint {
  readonly scene: Scene;
  readonly bar: string;
  readonly at: Vec3;
}

/**
 * Where work that was turned for a step takes bars in: one joint of each piece by itself, as it lies, with what is in it
 * already and the bar that comes, so that the way its free openings look can be read, and how long the long end of its sleeve is. It has its piece's number where
 * pieces are numbered.
 */
export function enteredJoints(model: Model, step: Step, rolled: readonly Rolled[], solids: Solids): readonly EnteredJoint[] {
  const hand = stageHand(model, step, solids);
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  const entered = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.closes : [])).filter((each): each is Socket => each.is === 'socket' && !fresh.includes(each.joint));
  const pieces = kindsOf(rolled);
  return pieces.flatMap(({ parts }, place): readonly EnteredJoint[] => {
    const joint = nearestOf(hand, entered.filter((each) => parts.includes(each.joint)).map((each) => each.joint));
    const own = entered.find((each) => each.joint === joint);
    if (own === undefined) return [];
    const { scene, ...coming } = enteredScene(model, hand, step, own, solids);
    return [{ ...coming, scene: pieces.length > 1 ? { ...scene, number: place + 1 } : scene }];
  });
}

function enteredScene(model: Model, hand: StageHand, step: Step, { joint, bar: coming, out, depth }: Socket, solids: Solids): EnteredJoint {
  const body = hand.body(joint, 'present');
  const shown = partsShown(step);
  const there = model.connections.filter((each): each is Socket => each.is === 'socket' && each.joint === joint && each.bar !== coming && shown.includes(each.bar));
  const way = turnedBy(step.standing.pose, out);
  const inOwn = (socket: Socket): Vec3 => turnedBy(undone(hand.part(joint).pose), socket.out);
  const bottom = plus(placed(body.pose, [0, 0, 0]), times(way, bottomOf(hand, joint, coming)));
  const scene: Scene = {
    id: `entered:${step.number}:${joint}`,
    bodies: [
      body, ...blindEnds(solids, body, hand.part(joint), there.map(inOwn)),
      ...there.map((socket) => stub(hand, socket, [0, 0, 0], 'present')), stub(hand, { joint, bar: coming, depth: 0 }, times(way, depth + SHOWN.off), 'new'),
    ],
    marks: [...longEndTold({ shape: hand.part(joint).shape, pose: body.pose }, awayFrom(there.map(({ out: to }) => turnedBy(step.standing.pose, to)))), { mark: 'arrow', path: [plus(bottom, times(way, depth + SHOWN.off)), plus(bottom, times(way, depth))] } satisfies Mark],
    view: STANDARD_VIEW,
  };
  return { scene, bar: coming, at: plus(bottom, times(way, depth + SHOWN.off + SHOWN.beyond * 0.8)) };
}

/** To the dimension of a sleeve's long end, mm. */
const AWAY = 60;

/** On the side on which no bar is: against all that go into a socket's way, or else below. */
function awayFrom(outs: readonly Vec3[]): Vec3 {
  const sum = outs.reduce<Vec3>(plus, [0, 0, 0]);
  return Math.hypot(...sum) < 1e-6 ? [0, 0, -AWAY] : times(sum, -AWAY / Math.hypot(...sum));
}

/** From a joint's middle to the end of a bar in it, mm. */
function bottomOf(hand: StageHand, joint: string, bar: string): number {
  const shape = hand.part(bar).shape;
  const half = shape.form === 'tube' ? shape.length / 2 : 0;
  const [x] = placed(undone(hand.pose(bar)), placed(hand.pose(joint), [0, 0, 0]));
  return Math.abs(x) - half;
}

/** The end of a bar at a joint, as far as it is shown. */
function stub(hand: StageHand, { joint, bar, depth }: Pick<Socket, 'joint' | 'bar' | 'depth'>, by: Vec3, look: 'present' | 'new'): SceneBody {
  const { shape } = hand.part(bar);
  const pose = hand.pose(bar);
  if (shape.form !== 'tube') return hand.body(bar, look, by);
  const end = Math.sign(placed(undone(pose), placed(hand.pose(joint), [0, 0, 0]))[0]) || 1;
  const length = Math.min(shape.length, depth + SHOWN.beyond);
  const piece: Extract<Shape, { form: 'tube' }> = { ...shape, length, holes: [] };
  const at: Pose = chained(moved(by), pose, moved([(end * (shape.length - length)) / 2, 0, 0]));
  return hand.prop({ tool: `end-of-${bar}` }, piece, at, look);
}
