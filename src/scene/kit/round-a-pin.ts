import { chained, dot, moved, placed, plus, threadedLength, times, type Model, type Pose, type Shape, type Vec3 } from '../../model/index.ts';
import type { Mark, SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import type { StageHand } from './stage.ts';
import { tell } from '../told.ts';

/** What a close-up shows of the work at one pin. */
export interface Shown {
  readonly bodies: readonly SceneBody[];
  readonly marks: readonly Mark[];
}

/** The drill bit comes out on the far side by `under`, mm; its chuck. */
const BIT = { under: 14, chuck: 20, chuckHeight: 18 };
/** The nose of the drill over its chuck, mm: told from a pin by its breadth. */
const NOSE: Shape = { form: 'pin', diameter: 34, length: 0.5, headDiameter: 46, headHeight: 58 };
/** The drill's arrow, from and to over the chuck, mm. */
const ARROW = { from: 118, to: 64 };

/** The bit right through what a pin will hold, with its diameter. `through` is the thickness of that, `over` how far the bit stands over it, mm; `pose` is the pin's. */
export function drilled({ kit }: Model, hand: StageHand, pose: Pose, { through, over }: { readonly through: number; readonly over: number }): Shown {
  const { diameter } = kit.jointPin;
  const bit: Shape = { form: 'pin', diameter, length: over + through + BIT.under, headDiameter: BIT.chuck, headHeight: BIT.chuckHeight };
  const top = over + BIT.chuckHeight;
  return {
    bodies: [hand.prop({ tool: 'bit' }, bit, chained(pose, moved([0, 0, over])), 'new'), hand.prop({ tool: 'drill-nose' }, NOSE, chained(pose, moved([0, 0, top])), 'new')],
    marks: [
      { mark: 'arrow', path: [placed(pose, [0, 0, top + ARROW.from]), placed(pose, [0, 0, top + ARROW.to])] },
      { mark: 'label', at: placed(pose, [0, 0, over / 2]), told: tell.diameter(diameter) },
    ],
  };
}

/** The way round by which a nut is turned on: how far beyond its wings, mm, how much of a round, and in how many parts. */
const ROUND = { past: 17, out: 4, angle: (290 * Math.PI) / 180, parts: 48 } as const;

/** Clockwise as one sees a nut from where it comes from, as threads are cut (common practice, no source); it ends on the eye's side. */
function turnedOn({ jointPin: { wingSpan, nutHeight } }: Model['kit'], nut: Pose, off: number, towardsEye: Vec3): readonly Vec3[] {
  const [x, y] = [dot(turnedBy(nut, [1, 0, 0]), towardsEye), dot(turnedBy(nut, [0, 1, 0]), towardsEye)];
  const [end, radius] = [Math.atan2(y, x), wingSpan / 2 + ROUND.out];
  return Array.from({ length: ROUND.parts + 1 }, (_, index) => {
    const angle = end + ROUND.angle * (1 - index / ROUND.parts);
    return placed(nut, [radius * Math.cos(angle), radius * Math.sin(angle), off + nutHeight + ROUND.past]);
  });
}

/** Pin first, then the wing nut from the other side, turned on, each drawn off by `pulled`, mm. */
export function fastened({ kit }: Model, hand: StageHand, { pinId, nutId }: { readonly pinId: string; readonly nutId: string }, pulled: { readonly pin: number; readonly nut: number }, towardsEye: Vec3): Shown {
  const off = (id: string): Vec3 => times(turnedBy(hand.pose(id), [0, 0, 1]), id === pinId ? pulled.pin : pulled.nut);
  const arrow = (id: string, tip: number): Mark =>
    ({ mark: 'arrow', path: [plus(placed(hand.pose(id), [0, 0, tip]), off(id)), placed(hand.pose(id), [0, 0, 0])] });
  const threadAt = (along: number): Vec3 => plus(placed(hand.pose(pinId), [0, 0, along]), off(pinId));
  const order = (id: string, number: number): Mark => ({ mark: 'order', at: plus(placed(hand.pose(id), [0, 0, 0]), off(id)), told: tell.number(number) });
  return {
    bodies: [hand.body(pinId, 'new', off(pinId)), hand.body(nutId, 'new', off(nutId))],
    marks: [
      { mark: 'thread', from: threadAt(-kit.jointPin.length + threadedLength(kit.jointPin)), to: threadAt(-kit.jointPin.length), diameter: kit.jointPin.diameter },
      arrow(pinId, -kit.jointPin.length), arrow(nutId, 0), { mark: 'turned-on', path: turnedOn(kit, hand.pose(nutId), pulled.nut, towardsEye) },
      order(pinId, 1), order(nutId, 2),
    ],
  };
}
