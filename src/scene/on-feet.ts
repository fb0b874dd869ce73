import type { Model, Solids } from '../model/index.ts';
import type { Plan, Step } from '../plan/index.ts';
import { SCENES } from '../work/scenes.ts';
import { cordStepsAfter } from './cord-steps.ts';
import { boxRound } from './kit/extent.ts';
import { momentScene } from './step-scene.ts';
import type { SceneBody, View } from './types.ts';

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
