import type { Vector3 } from 'three';
import { chained, placed, type Model, type Vec3 } from '../../src/model/index.ts';
import type { Step } from '../../src/plan/index.ts';
import { stepScene, type Mark, type Scene, type SceneBody } from '../../src/scene/index.ts';
import { partOf, solids } from '../support/rack.ts';
import { vector } from './poses.ts';

export type Arrow = Extract<Mark, { mark: 'arrow' }>;

export interface Shown {
  readonly step: Step;
  readonly scene: Scene;
}

export const shownSteps = (model: Model, steps: readonly Step[]): readonly Shown[] => steps.flatMap((step) => {
  const scene = stepScene(model, step, solids);
  return scene === null ? [] : [{ step, scene }];
});

export const arrowsOf = (scene: Scene): readonly Arrow[] => scene.marks.filter((mark): mark is Arrow => mark.mark === 'arrow');

export const placesOf = (mark: Mark): readonly Vec3[] => {
  switch (mark.mark) {
    case 'arrow': case 'turned-on': return mark.path;
    case 'length': return [mark.from, mark.to, mark.away];
    case 'axis': case 'thread': return [mark.from, mark.to];
    default: return [mark.at];
  }
};

export const turning = (step: Step): boolean => ['turn-item', 'stand-up'].includes(step.action);
export const sliding = (step: Step): boolean => step.motions.some((motion) => motion.kind === 'slide');

/** The body of a part as it would stand in its place. */
export const home = (model: Model, step: Step, id: string): SceneBody['pose'] => chained(step.standing.pose, partOf(model, id).pose);

/** An arrow may stand beside a part, so that it is not drawn on it, mm. */
export const BESIDE = 80;

export const ends = (path: readonly Vec3[]): readonly [Vector3, Vector3] => [vector(path[0] ?? [0, 0, 0]), vector(path.at(-1) ?? [0, 0, 0])];

/** Lowest and highest place of a body on its own z axis. */
export function tips({ mesh, pose }: SceneBody): readonly [Vector3, Vector3] {
  const heights = mesh.positions.filter((_, index) => index % 3 === 2);
  return [vector(placed(pose, [0, 0, Math.min(...heights)])), vector(placed(pose, [0, 0, Math.max(...heights)]))];
}
