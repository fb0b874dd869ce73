import type { Connection, Pose, Side, Vec3 } from '../../model/index.ts';
import type { Doing } from '../../work/facts.ts';
import type { FlapName, Fold, FoldedFlap, OrderReason } from '../types.ts';
import type { Cost } from './costs.ts';

export type { Doing, FlapName, Fold, FoldedFlap };

/** Something that moves to its place, and where it goes home. */
export interface Move {
  readonly parts: readonly string[];
  /** The straight way that it comes, as the finished item stands, mm. */
  readonly by: Vec3;
  /** The connections that it closes; their mouths are where the arrow ends. */
  readonly closes: readonly Connection[];
}

/** One step of a plan that was found. */
export interface FoundStep {
  /** Counts from 1. */
  readonly number: number;
  /** What wishes and reasons name it by; never to be taken apart. */
  readonly key: string;
  readonly does: Doing;
  /** The batch of identical sub-assemblies that it belongs to, by name; null for the item as a whole. */
  readonly batch: string | null;
  /** How often the worker does this step. */
  readonly times: number;
  readonly moves: readonly Move[];
  /** Flaps that are folded in the step, all at once. */
  readonly folds: readonly Fold[];
  /** The whole work turns about this axis, as the finished item stands, by this angle, rad. */
  readonly turns: { readonly axis: Vec3; readonly angle: number; /** The direction that is up afterwards. */ readonly to: Vec3 } | null;
  /** Parts that come to hand in this step; those of a finished sub-assembly came before. */
  readonly newParts: readonly string[];
  /** All parts of the work before the step. */
  readonly present: readonly string[];
  /** Flaps that are folded before the step; and after it, those of what is brought among them. */
  readonly folded: readonly FoldedFlap[];
  readonly foldedAfter: readonly FoldedFlap[];
  /** Parts that work on the bench is done on; none where things are put together. */
  readonly works: readonly string[];
  /** Pins whose holes are there when the step begins, and pins that the step drills the holes for. */
  readonly drilled: readonly string[];
  readonly drillsFor: readonly string[];
  /** The direction of the finished item that is up, and the pose that takes its coordinates to what the worker sees. */
  readonly up: Vec3;
  readonly pose: Pose;
  /** On the bench, before anything is put together. */
  readonly onBench: boolean;
  /** The side of the finished item that the step works on, when it is one side's. */
  readonly side: Side | null;
  /** Of several kinds of flat panel, which one is cut. */
  readonly letter: string | null;
  readonly people: 1 | 2;
  /** Parts of each body that the second person holds, and of each that a prop holds. */
  readonly held: readonly (readonly string[])[];
  readonly props: readonly (readonly string[])[];
  /** Parts of light work that would fall over. */
  readonly inHand: readonly (readonly string[])[];
  /** Why this step and no other was taken: its price, told by names. */
  readonly costs: readonly Cost[];
}

/** A batch of identical sub-assemblies. */
export interface Batch {
  readonly name: string;
  readonly times: number;
  /** The parts of each one; the first stands for all in the pictures. */
  readonly copies: readonly (readonly string[])[];
}

export interface FoundPlan {
  readonly steps: readonly FoundStep[];
  readonly batches: readonly Batch[];
  readonly reasons: readonly OrderReason[];
  /** What the whole order costs by the search's weights. */
  readonly cost: number;
}
