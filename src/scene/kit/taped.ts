import { chained, cross, dot, facing, jointPorts, lengthOf, looseFits, minus, placed, plus, times, undone, unit, type Model, type Pose, type PushFit, type Vec3 } from '../../model/index.ts';
import type { SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import type { StageHand } from './stage.ts';

/** How far a tape reaches over the joint and over the bar on either side of a mouth, and how far it stands off the joint, mm. */
const TAPE = { over: 14, on: 22, off: 1 } as const;

/** Tape round the mouths by which parts that are turned together would come out of one another, as they lie before that: bar and joint are bound by it. */
export const tapesOn = (model: Model, hand: StageHand, turned: readonly string[]): readonly SceneBody[] => looseFits(model, turned).flatMap((fit, index) => {
  const mouth = mouthOf(hand, fit);
  if (mouth === null) return [];
  const { at, out, wide } = mouth;
  const [length, outside] = [TAPE.over + TAPE.on, wide + 2 * TAPE.off];
  return [hand.prop({ tool: `tape-${index + 1}` }, { form: 'tube', length, outside, inside: wide, holes: [] }, along(plus(at, times(out, (TAPE.on - TAPE.over) / 2)), out), 'drawn')];
});

/** A pose whose x is a way. */
function along(at: Vec3, way: Vec3): Pose {
  const side = unit(cross(Math.abs(way[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0], way));
  return facing(at, way, side, cross(way, side));
}

interface Mouth {
  readonly at: Vec3;
  /** Out of the joint. */
  readonly out: Vec3;
  /** Of the joint, mm. */
  readonly wide: number;
}

/** Where a bar comes out of a joint; of a sleeve, that end out of which most of the bar comes. */
function mouthOf(hand: StageHand, fit: PushFit): Mouth | null {
  const [{ shape }, { shape: ofBar }] = [hand.part(fit.joint), hand.part(fit.bar)];
  const ports = jointPorts(shape);
  if (ports === null || ofBar.form !== 'tube') return null;
  const [pose, bar] = [hand.pose(fit.joint), hand.pose(fit.bar)];
  const ends = [-0.5, 0.5].map((share) => placed(bar, [share * ofBar.length, 0, 0])) as [Vec3, Vec3];
  const centre = placed(pose, [0, 0, 0]);
  if (fit.is === 'socket') {
    const out = turnedBy(chained(bar, undone(hand.part(fit.bar).pose)), fit.out);
    const [end, far] = ends.toSorted((a, b) => lengthOf(minus(a, centre)) - lengthOf(minus(b, centre))) as [Vec3, Vec3];
    return { at: plus(end, times(unit(minus(far, end)), fit.depth)), out, wide: ports.outside };
  }
  const sleeve = ports.ports.find((port) => port.is === 'sleeve' && Math.abs(dot(turnedBy(pose, port.axis), unit(minus(ends[1], ends[0])))) > 0.999);
  if (sleeve?.is !== 'sleeve') return null;
  const axis = turnedBy(pose, sleeve.axis);
  const free = ([1, -1] as const).map((side) => {
    const reach = side > 0 ? sleeve.above : sleeve.below;
    const past = Math.max(...ends.map((end) => side * dot(minus(end, centre), axis))) - reach;
    return { at: plus(centre, times(axis, side * reach)), out: times(axis, side), wide: ports.outside, past };
  });
  return free.toSorted((a, b) => b.past - a.past)[0] ?? null;
}
