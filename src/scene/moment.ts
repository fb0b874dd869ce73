import { chained, moved, type Model, type Solids, type Vec3 } from '../model/index.ts';
import type { Motion, Step } from '../plan/index.ts';
import { times, turnedBy } from './directions.ts';
import { stepScene } from './step-scene.ts';
import { foldScene } from './steps/fold.ts';
import { slideScene, wholeWay } from './steps/slide.ts';
import { turnedWork } from './steps/turn.ts';
import type { Scene, SceneBody } from './types.ts';

/** How far the drill goes down from where its picture holds it, mm. */
const DRILLED = 90;

/**
 * A step on its way, for a screen: `done` 0 as it begins to 1 as it ends. Slides go their whole proven way, flaps fold
 * as their facets allow, the work turns about its edge. Null for work on the bench, which is told by flat drawings.
 */
export function momentScene(model: Model, step: Step, solids: Solids, done: number): Scene | null {
  const scene = stepScene(model, step, solids);
  if (scene === null) return null;
  if (step.motions.some(({ kind }) => kind === 'fold')) return foldScene(model, step, solids, done);
  if (step.motions.some(({ kind }) => kind === 'turn')) return { ...scene, bodies: turnedWork(model, step, solids, done), marks: [] };
  switch (step.action) {
    case 'drill': return { ...scene, bodies: scene.bodies.map((body) => (body.partId === null ? movedBy(body, turnedBy(body.pose, [0, 0, -DRILLED * done])) : body)) };
    case 'brace':
    case 'stand-decks': return { ...scene, bodies: scene.bodies.map((body) => movedBy(body, offOf(step, body.id, 1 - done))) };
    default: return slideScene(model, step, solids, (slide) => wholeWay(slide) * (1 - done));
  }
}

const movedBy = (body: SceneBody, by: Vec3): SceneBody => ({ ...body, pose: chained(moved(by), body.pose) });

/** How far a part still is from its place, with `left` of its way to go. */
function offOf(step: Step, id: string, left: number): Vec3 {
  const slide = step.motions.find((motion): motion is Extract<Motion, { kind: 'slide' }> => motion.kind === 'slide' && motion.parts.includes(id));
  return slide === undefined ? [0, 0, 0] : times(turnedBy(step.standing.pose, slide.by), -left);
}
