import type { TubeCutPlan } from '../../cut/index.ts';
import type { Model } from '../../model/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import type { Papers } from '../formats.ts';
import type { Ink } from '../pictograms/ink.ts';
import type { DrawnPicture } from '../types.ts';

/** What a flat drawing is made from. */
export interface FlatGivens {
  readonly model: Model;
  readonly plan: Plan;
  readonly cuts: TubeCutPlan;
  readonly papers: Papers;
}

export type DrawnFlat = (givens: FlatGivens, step: Step) => readonly DrawnPicture[];

/** What a kind of work looks like on paper. */
export type WorkPicture = { readonly pictogram: Ink } & (
  /** Work on the bench, drawn flat: the step's picture, and further ones where one does not hold it all. */
  | { readonly flat: DrawnFlat }
  /** Work told by its scene: of a bare frame, a deck or the whole item; and flat drawings: of what comes before it, beside it where it is done for the first time, or wherever it is done. */
  | { readonly paper: 'frame' | 'deck' | 'whole'; readonly before?: DrawnFlat; readonly once?: DrawnFlat; readonly each?: DrawnFlat }
);
