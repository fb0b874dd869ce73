import type { PartKind, Pose, Side, Vec3 } from '../model/index.ts';

/** What the worker does in a step. Key under `actions` in the locale files. */
export type Action =
  | 'cut-tubes'
  | 'cut-blank'
  | 'mark-inside'
  | 'mark-creases'
  | 'mark-notches'
  | 'punch-holes'
  | 'cut-notches'
  | 'crease'
  | 'half-cut'
  | 'push-tubes'
  | 'close-frame'
  | 'lay-frame'
  | 'wrap-side'
  | 'pin-ends'
  | 'pin-middle'
  | 'turn-deck'
  | 'mark-posts'
  | 'stand-decks'
  | 'push-posts'
  | 'drill'
  | 'pin-posts'
  | 'turn-item'
  | 'stand-up'
  | 'cut-panel'
  | 'set-rails'
  | 'hold-panel'
  | 'pin-panel'
  | 'brace';

export type Tool = 'tape' | 'pencil' | 'straight-edge' | 'saw' | 'knife' | 'punch' | 'creaser' | 'mallet' | 'drill' | 'hands';

/** Key under `cautions`; each has a safety sign. */
export type Caution = 'sharp' | 'dust' | 'eyes' | 'gloves' | 'crush' | 'children' | 'climbing' | 'tipping' | 'manual';

/** What the worker looks at when the step is done. Key under `checks`; drawn as a gauge or a right/wrong pair. */
export type WorkerCheck =
  | { readonly kind: 'measure'; readonly name: string; readonly value: number }
  | { readonly kind: 'pair'; readonly name: string };

export type Motion =
  /** The parts come from `pose moved by −by` to their place along the straight line `by` (mm, as the finished item stands). */
  | { readonly kind: 'slide'; readonly parts: readonly string[]; readonly by: Vec3 }
  | { readonly kind: 'fold'; readonly panel: string; readonly side: Side }
  /** The whole work turns about `axis` by `angle` rad. */
  | { readonly kind: 'turn'; readonly axis: Vec3; readonly angle: number };

/** How the work lies during a step: a pose that is applied to every part's pose in the finished item. */
export interface Standing {
  readonly name: 'deck-building' | 'deck-in-use' | 'on-back' | 'on-front' | 'upright' | 'bench';
  readonly pose: Pose;
}

export interface NewPart {
  readonly kind: PartKind;
  readonly ids: readonly string[];
}

/** What a step works on, beside the parts that move. */
export type StepDetail =
  | { readonly on: 'whole' }
  /** One side of a panel, the two posts of a side, or a face to brace. */
  | { readonly on: 'side'; readonly side: Side }
  /** Short tubes or long tubes of a frame, or a rail that is both frame and tube. */
  | { readonly on: 'tubes'; readonly tubes: 'short' | 'long' | 'rail' }
  /** A kind of flat panel, by its place in the model's list; lettered where there are several. */
  | { readonly on: 'plates'; readonly index: number; readonly letter: string | null }
  /** One flat panel, on one side of the item. */
  | { readonly on: 'plate'; readonly plate: string; readonly side: Side };

export interface Step {
  /** Counts from 1 through the whole booklet. */
  readonly number: number;
  /** For example `wrap-side:left`; stable when numbers change. A name, never to be taken apart: `detail` tells what it works on. */
  readonly key: string;
  readonly action: Action;
  readonly detail: StepDetail;
  /** The side the action works on, when it is one side's. */
  readonly side: Side | null;
  /** The run of identical sub-assemblies the step belongs to (`deck`), or null. */
  readonly run: string | null;
  /** How often the worker does this step: the number of identical sub-assemblies, or 1. */
  readonly times: number;
  readonly newParts: readonly NewPart[];
  /** Parts that are there before the step, new ones excluded. */
  readonly present: readonly string[];
  readonly motions: readonly Motion[];
  /** Parts that have their pin holes when the step begins. */
  readonly drilled: readonly string[];
  /** Pins that the step drills the holes for. */
  readonly drillsFor: readonly string[];
  /** Fold of each side when the step is done. */
  readonly folded: readonly Side[];
  readonly standing: Standing;
  readonly tools: readonly Tool[];
  readonly people: 1 | 2;
  readonly cautions: readonly Caution[];
  readonly check: WorkerCheck | null;
  readonly minutes: number;
}

/** An ordering that was asked for and why it holds. */
export interface OrderReason {
  readonly first: string;
  readonly then: string;
  /** Name of the rule, `geometry`, or `designer`. */
  readonly rule: string;
  /** Parts that would be in the way, for `geometry`. */
  readonly parts: readonly string[];
}

export interface Plan {
  readonly steps: readonly Step[];
  readonly reasons: readonly OrderReason[];
}
