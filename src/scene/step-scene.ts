import type { Model, Solids } from '../model/index.ts';
import type { Step } from '../plan/index.ts';
import { SCENES } from '../work/scenes.ts';
import type { Scene } from './types.ts';

/** The scene of a step, or null when the step is told by a flat drawing (work on the bench). */
export const stepScene = (model: Model, step: Step, solids: Solids): Scene | null =>
  SCENES[step.action]?.scene({ model, step, solids }) ?? null;

/** What the whole view of a step hides or shows too small: drilling through, pin and wing nut. Null where there is nothing of the kind. */
export const closeUpScene = (model: Model, step: Step, solids: Solids): Scene | null =>
  SCENES[step.action]?.closeUp?.({ model, step, solids }) ?? null;

/** A step on its way, for a screen: `done` 0 as it begins to 1 as it ends. Null for work on the bench. */
export const momentScene = (model: Model, step: Step, solids: Solids, done: number): Scene | null =>
  SCENES[step.action]?.moment({ model, step, solids }, done) ?? null;
