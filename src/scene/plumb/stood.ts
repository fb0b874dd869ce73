import { chained, undone, type Model, type Part, type Pose, type Solids } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { turnedBy } from '../kit/directions.ts';
import { momentScene } from '../step-scene.ts';
import type { SceneBody } from '../types.ts';

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
