import type { Model } from '../model/index.ts';
import type { Declared, People, WallKind } from '../read/index.ts';
import type { Limits } from './limits.ts';
import type { FindingName } from './names.ts';
import type { Stance } from './stand/stance.ts';

export type Verdict = 'pass' | 'caution' | 'fail';

/** One checked fact. Figures in the unit given (mm, N, N/mm², rad, kg·m, 1). */
export interface Finding {
  /** Key under `findings` in the locale files, for example `tube-bending`. */
  readonly name: FindingName;
  readonly verdict: Verdict;
  readonly figure: number;
  readonly limit: number;
  /** Whether the figure may be at most or must be at least the limit. */
  readonly bound: 'most' | 'least';
  readonly unit: string;
  /** limit / figure for upper limits, figure / limit for lower ones: at least 1 passes. */
  readonly margin: number;
  /** Formula or publication of the limit, with its tag: R read, R2 read second hand, C computed, M from memory. */
  readonly source: string;
  /** Parts that cause it. */
  readonly parts: readonly string[];
}

/** What is promised of one panel that something stands on, lies in or sits on: the least over all its cases and those of the whole item. */
export interface PlaceLoad {
  /** Name of its place in the file. */
  readonly place: string;
  readonly panel: string;
  /** Height of its middle, mm. */
  readonly height: number;
  /** N spread over it, while every other place bears its own. */
  readonly load: number;
}

/** What the checks support saying in the booklet. */
export interface Advice {
  /**
   * N spread over one deck, the one that bears least, or null when no load is supported or any finding fails: for a seat, table or bed the load of
   * its use (the test load, or the largest safe one, over the impact of that use). Less where the joints are untested.
   */
  readonly safeLoadPerDeck: number | null;
  /** The same for each panel in use, from the highest down, all at once; empty where no load is supported. The least of them is the load above. */
  readonly loads: readonly PlaceLoad[];
  /** The finding that stops a greater safe load; null when only the cap does. */
  readonly governedBy: string | null;
  /** The wall that it is fixed to, null where it need not be; no load is supported where that is a board. */
  readonly wall: WallKind | null;
  /** N, pushed at the top, that tips the empty item the way it tips most easily. */
  readonly tippingForce: number;
  /** Nobody has tested the kit's joints: the load above is reduced for it. */
  readonly untestedJoint: boolean;
  /** For whom the item file says it is, and how thick its mattress may be, mm (null but for beds). */
  readonly people: People;
  readonly mattress: number | null;
}

/** A check that says nothing of this item, and why, in English for logs and build.json. */
export interface NotApplied {
  readonly name: FindingName;
  readonly because: string;
}

export interface Report {
  readonly findings: readonly Finding[];
  readonly notApplied: readonly NotApplied[];
  readonly advice: Advice;
}

/** What a check looks at: one size variant, what its file declares, the limits in force, the load on every deck in N, and how the frame stands. */
export interface Case {
  readonly model: Model;
  readonly declared: Declared;
  readonly limits: Limits;
  readonly load: number;
  readonly stance: Stance;
}

export type Check = (given: Case) => readonly Finding[];
