import type { Connection, PartKind, Pose, Side, Vec3 } from '../model/index.ts';
import type { Action, Caution, StandingName, StepDetail, Supply, SupplyName, Tool, ToolSizes, WorkerCheck } from '../work/facts.ts';

export type { Action, Caution, StandingName, StepDetail, Supply, SupplyName, Tool, ToolSizes, WorkerCheck };

export type Motion =
  /** The parts come from `pose moved by −by` to their place along the straight line `by` (mm, as the finished item stands). */
  | { readonly kind: 'slide'; readonly parts: readonly string[]; readonly by: Vec3; /** What is joined by it. */ readonly closes: readonly Connection[] }
  /** A flap of a panel, on that side of the panel, from one stage to another: 0 flat to 1 home. */
  | { readonly kind: 'fold'; readonly panel: string; readonly flap: string; readonly side: Side; readonly from: number; readonly to: number }
  /** The whole work turns about `axis`, as the finished item stands, by `angle` rad. */
  | { readonly kind: 'turn'; readonly axis: Vec3; readonly angle: number };

/** How the work lies during a step: a pose that is applied to every part's pose in the finished item. */
export interface Standing {
  readonly name: StandingName;
  readonly pose: Pose;
}

/** A flap of a panel, by its name there. */
export interface FlapName {
  readonly panel: string;
  readonly flap: string;
}

/** A flap on its way from one stage to another. */
export interface Fold extends FlapName {
  readonly from: number;
  readonly to: number;
}

/** A flap that is folded: home, or as far as a stage between 0 (flat) and 1. */
export interface FoldedFlap extends FlapName {
  readonly stage: number;
}

/** A block that lying work rests on so that the pegs under it are clear of the floor. Lengths in mm. */
export interface Footing {
  /** The middle of its foot, as the finished item stands: its own x along what rests on it, its z up from the floor. */
  readonly pose: Pose;
  /** Along what rests on it, across that, and how high. */
  readonly long: number;
  readonly wide: number;
  readonly high: number;
  /** The part that rests on it, and what is wrapped round it there. */
  readonly holds: readonly string[];
}

export interface NewPart {
  readonly kind: PartKind;
  readonly ids: readonly string[];
}

export interface Step {
  /** Counts from 1 through the whole booklet. */
  readonly number: number;
  /** For example `wrap-side:left`; stable when numbers change. A name, never to be taken apart: `detail` tells what it works on. */
  readonly key: string;
  readonly action: Action;
  readonly detail: StepDetail;
  /** The side the action works on, when it is one side's. */
  readonly side: Side | null;
  /** The batch of identical sub-assemblies the step belongs to (`deck`), or null. */
  readonly run: string | null;
  /** How often the worker does this step: the number of identical sub-assemblies, or 1. */
  readonly times: number;
  readonly newParts: readonly NewPart[];
  /** Parts that are there before the step, new ones excluded. */
  readonly present: readonly string[];
  readonly motions: readonly Motion[];
  /** Pins whose holes are there when the step begins. */
  readonly drilled: readonly string[];
  /** Pins that the step drills the holes for. */
  readonly drillsFor: readonly string[];
  /** Flaps that are folded when the step is done, and how far. */
  readonly folded: readonly FoldedFlap[];
  /** Parts of each body that the second person holds, and of each that a prop holds. */
  readonly held: readonly (readonly string[])[];
  readonly props: readonly (readonly string[])[];
  /** The blocks that the whole work lies on: when the step begins, and when it is done, which are others only where it turns the work. */
  readonly footing: { readonly before: readonly Footing[]; readonly after: readonly Footing[] };
  /** Parts that are worked on although they were there before, or will come later. */
  readonly toHand: readonly NewPart[];
  /** What it takes beside the item's parts, all of it. */
  readonly supplies: readonly Supply[];
  readonly standing: Standing;
  readonly tools: readonly Tool[];
  readonly sizes: ToolSizes;
  readonly people: 1 | 2;
  readonly cautions: readonly Caution[];
  readonly check: WorkerCheck | null;
  readonly minutes: number;
  /** Minutes to wait when it is done, before the work goes on; each repetition waits while the next is done. */
  readonly waits: number;
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

/** A batch of identical sub-assemblies. */
export interface Batch {
  readonly name: string;
  readonly times: number;
  /** The parts of the one that stands for all in the pictures. */
  readonly parts: readonly string[];
  /** The parts of each, that one first. */
  readonly copies: readonly (readonly string[])[];
}

export interface Plan {
  readonly steps: readonly Step[];
  readonly batches: readonly Batch[];
  readonly reasons: readonly OrderReason[];
}
