import type { PictureOf } from '../../draw/index.ts';
import type { PartKind } from '../../model/index.ts';
import type { Caution, Plan, Tool } from '../../plan/index.ts';
import type { AnyPaper } from '../papers/index.ts';
import type { EditionName } from '../publications/facts.ts';
import type { Paper, PictureSize, PlacePicture } from '../pages/index.ts';
import type { Words } from '../words/index.ts';

/** What may have changed, in the order in which it is told. */
export const ASPECTS = ['measure', 'length', 'part', 'cut', 'tubes', 'pattern', 'step', 'finding', 'load', 'picture'] as const;

/** Pieces of a tube of one length, mm. */
export interface Pieces {
  readonly kind: PartKind;
  readonly length: number;
  readonly count: number;
}

/** What is done in a step, as far as a build records it. */
export interface StepWork {
  readonly is: 'work';
  readonly times: number;
  readonly people: number;
  readonly minutes: number;
  readonly newParts: readonly { readonly kind: PartKind; readonly count: number }[];
  readonly tools: readonly Tool[];
  readonly cautions: readonly Caution[];
}

/** What something is or was. Figures have six digits that count: two that differ by less are alike. */
export type Told =
  /** In mm, rad, N, kg; a unit of 1 is a number. Null where none is shown. */
  | { readonly is: 'figure'; readonly value: number | null; readonly unit: string }
  | { readonly is: 'pieces'; readonly pieces: readonly Pieces[] }
  | { readonly is: 'judged'; readonly verdict: 'pass' | 'caution' | 'fail'; readonly figure: number; readonly limit: number; readonly unit: string }
  | { readonly is: 'wall'; readonly wall: 'masonry' | 'timber' | 'board' | null }
  | { readonly is: 'place'; readonly step: number }
  | StepWork
  /** Too much to tell, but that it is another; by its content. */
  | { readonly is: 'content'; readonly content: string };

/** One thing that is otherwise than before; `before` is null for what is new, `after` for what is gone. */
export interface Change {
  readonly aspect: (typeof ASPECTS)[number];
  /** By the name that the item, its parts, checks and steps have. */
  readonly name: string;
  /** Of several findings of one name which one it is, from 1. */
  readonly nth: number;
  /** The step's number, before where it is gone; null for all else. */
  readonly step: number | null;
  readonly before: Told | null;
  readonly after: Told | null;
}

/** Pages to print again of so many, and of which booklets. */
export interface Reprint {
  readonly edition: EditionName;
  /** Null where its pages are the same on all. */
  readonly paper: AnyPaper | null;
  /** Languages in which they are these pages. */
  readonly langs: readonly string[];
  readonly pages: readonly number[];
  readonly pageCount: number;
}

/** What was sawn for the earlier build and serves the new one. */
export interface StillServing {
  readonly asTheyAre: readonly Pieces[];
  /** Longer ones of the same kind, and what they can be shortened to. */
  readonly shortened: readonly (Pieces & { readonly to: number })[];
  /** Pieces that what was left of the stock tubes gives. */
  readonly fromOffCuts: readonly Pieces[];
}

/** The place of a picture before and now, each with the picture's own size; null where there was none, or it is kept no more. */
export interface PicturePair {
  readonly of: PictureOf;
  readonly before: PlacedSide | null;
  readonly after: PlacedSide;
}

export type PlacedSide = PictureSize & { readonly id: string };

export interface ChangePagesInput {
  readonly item: string;
  readonly size: string;
  readonly paper: Paper;
  readonly words: Words;
  /** The steps as they are now. */
  readonly plan: Plan;
  readonly changes: readonly Change[];
  readonly reprints: readonly Reprint[];
  /** Where cut lengths changed. */
  readonly serving: StillServing | null;
  readonly pairs: readonly PicturePair[];
  readonly contentMark: string;
  /** The mark of what it is compared with; null where its build did not write it down. */
  readonly earlierMark: string | null;
  readonly placePicture: PlacePicture;
}
