import type { TubeCutPlan } from '../cut/index.ts';
import type { Model, PartKind, Solids } from '../model/index.ts';
import type { Action, Plan } from '../plan/index.ts';
import { letteredScene } from '../scene/index.ts';
import { FORMATS } from './formats.ts';
import { cachedDrawer, partPictures } from './item-pictures.ts';
import { composePicture } from './picture/index.ts';
import { pictureAs } from './picture-of.ts';
import { stepPictures } from './step-pictures.ts';
import type { Picture } from './types.ts';

/** An action and a part of an item, each with one picture that shows it. */
export interface Examples {
  readonly actions: ReadonlyMap<Action, Picture>;
  readonly parts: ReadonlyMap<PartKind, Picture>;
  /** The finished item with its lettered lengths. */
  readonly lettered: Picture;
}

/** One picture for each action and kind of part that an item has and that is not in `known` yet. */
export function examplePictures(model: Model, plan: Plan, cuts: TubeCutPlan, solids: Solids, known: { readonly actions: ReadonlySet<Action>; readonly parts: ReadonlySet<PartKind> }): Examples {
  const draw = cachedDrawer();
  const givens = { model, plan, cuts, solids, draw };
  const firsts = plan.steps.filter((step, index) => !known.actions.has(step.action) && plan.steps.findIndex(({ action }) => action === step.action) === index);
  return {
    actions: new Map(firsts.flatMap((step) => stepPictures(givens, step).slice(0, 1).map((picture) => [step.action, picture] as const))),
    parts: new Map(partPictures(model, solids, draw).flatMap((picture): [PartKind, Picture][] =>
      (picture.of.what !== 'part' || known.parts.has(picture.of.kind) ? [] : [[picture.of.kind, picture]]))),
    lettered: pictureAs({ what: 'lettered' }, composePicture(letteredScene(model, solids), FORMATS.page.lettered, draw)),
  };
}
