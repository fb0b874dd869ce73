import { chained, undone, type Model, type Part, type Pose, type Solids } from '../model/index.ts';
import type { Plan, Step } from '../plan/index.ts';
import { SCENES } from '../work/scenes.ts';
import { turnedBy } from './kit/directions.ts';
import { boxRound } from './kit/extent.ts';
import { momentScene } from './step-scene.ts';
import type { SceneBody, View } from './types.ts';

/** The cosine from which a tube is upright. */
const UPRIGHT = 0.999;

/** The work as it stands when it has been stood up, and how that is turned and moved from the finished item. */
export interface Stood {
  readonly bodies: readonly SceneBody[];
  readonly pose: Pose;
  readonly legs: readonly Part[];
}

export function stoodBy(model: Model, step: Step, solids: Solids): Stood | null {
  const bodies = momentScene(model, step, solids, 1)?.bodies ?? [];
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const [any] = bodies.flatMap(({ partId, pose }) => {
    const part = partId === null ? undefined : parts.get(partId);
    return part === undefined ? [] : [chained(pose, undone(part.pose))];
  });
  if (any === undefined) return null;
  const legs = model.parts.filter(({ id, shape, pose }) => shape.form === 'tube' && step.present.includes(id) && Math.abs(turnedBy(pose, [1, 0, 0])[2]) > UPRIGHT);
  return { bodies, pose: any, legs };
}

/** The steps after another that tie cords. */
export const cordStepsAfter = ({ steps }: Plan, { number: after }: Step): readonly Step[] =>
  steps.filter(({ number, newParts }) => number > after && newParts.some(({ kind }) => kind === 'cable'));

/** Work that has been stood up: whether all its feet stand, seen level. Lengths in mm. */
export interface OnFeet {
  readonly bodies: readonly SceneBody[];
  readonly view: View;
  readonly floor: number;
  /** From where to where the foot at the right end stands, as it is seen. */
  readonly foot: readonly [number, number];
}

/** What is no higher over the floor than this stands on it; what stands along it is a foot no longer than so many, mm. */
const STANDS = 3;
const FOOT = 60;

/** How the work of a step stands on its feet; null where the step does not stand it up, or a plumb line tells more: where cords hold it plumb. */
export function onFeetOf(model: Model, plan: Plan, step: Step, solids: Solids): OnFeet | null {
  if (SCENES[step.action]?.standsUp !== true || cordStepsAfter(plan, step).length > 0) return null;
  const { bodies = [] } = momentScene(model, step, solids, 1) ?? {};
  const boxes = bodies.map((body) => boxRound([body]));
  const floor = Math.min(...boxes.map(({ min }) => min[2]));
  const standing = boxes.filter(({ min }) => min[2] < floor + STANDS);
  const [right] = standing.toSorted((one, other) => other.max[0] - one.max[0]);
  if (right === undefined) return null;
  return { bodies, view: { towardsEye: [0, -1, 0], up: [0, 0, 1] }, floor, foot: [Math.max(right.min[0], right.max[0] - FOOT), right.max[0]] };
}
