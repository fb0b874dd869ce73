import type { Model, Solids } from '../model/index.ts';
import { isTurn, type Step } from '../plan/index.ts';
import { handRoom, slidingParts } from './kit/hand-room.ts';
import { heldMarks } from './kit/held.ts';
import { isOnBlocks, propBodies } from './kit/props.ts';
import { stageHand } from './kit/stage.ts';
import { SCENES } from '../work/scenes.ts';
import type { Mark, Scene } from './types.ts';

/** The scene of a step, on its blocks where it is propped, with the hands that hold it, or null when the step is told by a flat drawing (work on the bench). */
export function stepScene(model: Model, step: Step, solids: Solids): Scene | null {
  const scene = onBlocks(model, step, solids, SCENES[step.action]?.scene({ model, step, solids }) ?? null);
  return scene === null || step.held.length === 0 ? scene : { ...scene, marks: [...scene.marks, ...handsIn(model, step, solids, scene)] };
}

/** Moments of a step in which a flap is looked at, from 0 as it begins to 1 as it ends. */
const MOMENTS: readonly number[] = Array.from({ length: 9 }, (_, index) => index / 8);

/** The hands that hold the work in a step, clear of all that is done there at any moment. */
function handsIn(model: Model, step: Step, solids: Solids, scene: Scene): readonly Mark[] {
  const [work, stage] = [SCENES[step.action], stageHand(model, step, solids)];
  const folds = step.motions.some(({ kind }) => kind === 'fold') ? MOMENTS : [];
  const bent = folds.flatMap((done) => work?.moment({ model, step, solids }, done).bodies.filter(({ look }) => look === 'new') ?? []);
  const room = handRoom(stage, step, scene, [...slidingParts(stage, step), { bodies: bent, off: [[0, 0, 0]] }]);
  return heldMarks(stage, step, scene, room, work?.handElsewhere?.({ model, step, solids }) === true ? 1 : 2);
}

function onBlocks(model: Model, step: Step, solids: Solids, scene: Scene | null): Scene | null {
  // Work that is turned leaves its blocks and comes to others: its own scene shows them.
  if (scene === null || !isOnBlocks(step) || isTurn(step)) return scene;
  return { ...scene, bodies: [...scene.bodies, ...propBodies(stageHand(model, step, solids), step)] };
}

/** What the whole view of a step hides or shows too small: drilling through, pin and wing nut. Null where there is nothing of the kind. */
export const closeUpScene = (model: Model, step: Step, solids: Solids): Scene | null =>
  SCENES[step.action]?.closeUp?.({ model, step, solids }) ?? null;

/** How the work stands when a step is done, seen level; null where its scene tells it. */
export const homeScene = (model: Model, step: Step, solids: Solids): Scene | null =>
  SCENES[step.action]?.home?.({ model, step, solids }) ?? null;

/** What is done one after the other where a step drills or fastens several places of one thing; none where its scene tells it. */
export const seriesScenes = (model: Model, step: Step, solids: Solids): readonly Scene[] =>
  SCENES[step.action]?.series?.({ model, step, solids }) ?? [];

/** A step on its way, for a screen: `done` 0 as it begins to 1 as it ends. Null for work on the bench. */
export const momentScene = (model: Model, step: Step, solids: Solids, done: number): Scene | null =>
  onBlocks(model, step, solids, SCENES[step.action]?.moment({ model, step, solids }, done) ?? null);
