import type { PartKind, Side } from '../model/index.ts';

export type Tool = 'tape' | 'pencil' | 'straight-edge' | 'saw' | 'knife' | 'punch' | 'creaser' | 'mallet' | 'drill' | 'hands' | 'file' | 'screwdriver' | 'scale';

/** What a wall is made of that an item is fixed to. */
export type WallKind = 'masonry' | 'timber' | 'board';

/** Key under `cautions`; each has a safety sign. */
export type Caution = 'sharp' | 'dust' | 'eyes' | 'gloves' | 'crush' | 'children' | 'climbing' | 'tipping' | 'manual';

/** What the worker looks at when the step is done. Key under `checks`; drawn as a gauge or a right/wrong pair. */
export type WorkerCheck =
  | { readonly kind: 'measure'; readonly name: string; readonly value: number }
  | { readonly kind: 'pair'; readonly name: string };

/** What a step works on, beside the parts that move. */
export type StepDetail =
  | { readonly on: 'whole' }
  /** One side of a panel, the two posts of a side, or a face to brace. */
  | { readonly on: 'side'; readonly side: Side }
  /** Short tubes or long tubes of a frame, or a rail that is both frame and tube; else joints that go onto tubes, or tubes that go into joints. */
  | { readonly on: 'tubes'; readonly tubes: 'short' | 'long' | 'rail' | 'onto' | 'into' }
  /** A kind of wrapped panel, by its place in the model's list of patterns. */
  | { readonly on: 'pattern'; readonly index: number }
  /** A kind of flat panel, by its place in the model's list; lettered where there are several. */
  | { readonly on: 'plates'; readonly index: number; readonly letter: string | null }
  /** The wall that the whole item is fixed to; on a board it is not. */
  | { readonly on: 'wall'; readonly wall: WallKind }
  /** One flat panel, on one side of the item where it is on one. */
  | { readonly on: 'plate'; readonly plate: string; readonly side: Side | null };

/** How the work lies. */
export type StandingName = 'bench' | 'deck-building' | 'deck-in-use' | 'on-back' | 'on-front' | 'lying' | 'upright';

/** A piece of work as the rules see it. */
export interface PlannedWork {
  /** The kind of work. */
  readonly action: string;
  readonly detail: StepDetail;
  /** Identical sub-assemblies it is done on, or null for the item as a whole. */
  readonly run: string | null;
  readonly standing: StandingName;
}

/** Picks work; `Named` are the kinds of work it names, so that the catalogue can tell a name that is none. */
export interface Pick<Named extends string = string> {
  (work: PlannedWork): boolean;
  readonly named?: Named;
}

/** An ordering: all work that `first` picks before all work that `then` picks. */
export interface Rule<Named extends string = string> {
  readonly name: string;
  readonly reason: string;
  /** The work itself asks for it: a cut panel before a creased one, a hole before its pin. No wish overrides it. */
  readonly firm: boolean;
  /** Holds within one run, within one run and on one flat panel where both work on one, or everywhere. */
  readonly within: 'run' | 'plate' | 'item';
  readonly first: Pick<Named>;
  readonly then: Pick<Named>;
}

/** A feature of a wrapped panel that asks for the work, once for each there is. Other work is asked for by the plan's own jobs. */
export type AskedBy =
  /** The panel while it lies on the bench. */
  | { readonly feature: 'panel' }
  /** A side of the panel on its frame, and what moves there: pins come in at their ends first. */
  | { readonly feature: 'side'; readonly moves: 'flap' | 'end-pins' | 'middle-pins' | 'nothing' };

/** All that is known of a kind of work but for its pictures. What is left out does not hold of it. */
export interface WorkFacts<Named extends string = string> {
  readonly tools: readonly Tool[];
  readonly people: 1 | 2;
  readonly cautions: readonly Caution[];
  /** None where there is nothing to be done wrong that one could see. */
  readonly check: WorkerCheck | null;
  /** For one worker or pair, once. */
  readonly minutes: number;
  /** Share of its minutes that it takes, by what it is done on; all of them when left out. */
  readonly shareOf?: (detail: StepDetail) => number;
  /** Minutes that must pass when it is done before the work goes on: until glue is dry. */
  readonly waits: number;
  readonly askedBy?: AskedBy;
  /** It brings finished decks and frames to the item: what it places was made before. */
  readonly joins?: true;
  /** On an upright item it is seen from outside the face it is done on; else from inside. */
  readonly seenFrom?: 'outside';
  /** A trainer does all of it the day before a workshop, because it is dusty and slow to teach; or makes one sample to show. */
  readonly prepared?: 'all' | 'sample';
  /** The chapter before the steps that shows it, to be looked at. */
  readonly shownIn?: 'lengths' | 'pattern' | 'creasing' | 'plates';
  /** Whose number its caption tells. */
  readonly counts?: readonly PartKind[];
  /** Which of its captions is said, by what it is done on: the last part of the key under `actions.<action>`. */
  readonly captionOf?: (detail: StepDetail) => string;
  /** Parts that are to hand although it brings none. */
  readonly toHand?: PartKind;
  /** What must come before what, with the reason. `sides` are those of a wrapped panel in the order they are wrapped. */
  readonly rules?: (sides: readonly Side[]) => readonly Rule<Named>[];
}
