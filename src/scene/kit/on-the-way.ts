import { chained, moved, times, type Vec3 } from '../../model/index.ts';
import type { Motion, Step } from '../../plan/index.ts';
import type { Scene, SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';

export type Slide = Extract<Motion, { kind: 'slide' }>;

export const movedBy = (body: SceneBody, by: Vec3): SceneBody => ({ ...body, pose: chained(moved(by), body.pose) });

/** A scene that shows all parts in their places, with the sliding ones as far off as they are when `done` of their way, 0 to 1, is gone. */
export const onTheWay = (scene: Scene, step: Step, done: number): Scene =>
  ({ ...scene, bodies: scene.bodies.map((body) => movedBy(body, offOf(step, body.id, 1 - done))) });

/** How far a part still is from its place, with `left` of its way to go. */
function offOf(step: Step, id: string, left: number): Vec3 {
  const slide = step.motions.find((motion): motion is Slide => motion.kind === 'slide' && motion.parts.includes(id));
  return slide === undefined ? [0, 0, 0] : times(turnedBy(step.standing.pose, slide.by), -left);
}
