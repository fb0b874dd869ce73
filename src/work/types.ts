import type { Model, PartKind, Shape, Side } from '../model/index.ts';
import type { WallKind } from '../read/index.ts';

export type Tool = 'tape' | 'pencil' | 'straight-edge' | 'saw' | 'knife' | 'punch' | 'creaser' | 'mallet' | 'drill' | 'hands' | 'file' | 'screwdriver' | 'scale' | 'finder' | 'bottle' | 'square' | 'plumb-line' | 'clamp' | 'steps' | 'block' | 'board' | 'water' | 'sticky-tape';

export type { WallKind };

/** Key under `cautions`; each has a safety sign. */
export type Caution = 'sharp' | 'dust' | 'eyes' | 'gloves' | 'crush' | 'bit' | 'lines' | 'children' | 'climbing' | 'sitting' | 'tipping' | 'manual';

/** What the worker looks at when the step is done. Key under `checks`; drawn as a gauge or a right/wrong pair. */
export type WorkerCheck =
  | { readonly kind: 'measure'; readonly name: string; readonly value: number }
  | { readonly kind: 'pair'; readonly name: string };

/** What a step works on, beside the parts that move. */
export type StepDetail =
  | { readonly on: 'whole' }
  /** One side of a panel, the two posts of a side, or a face to brace. */
  | { readonly on: 'side'; readonly side: Side }
  /** Joints that go onto tubes, or tubes that go into joints. */
  | { readonly on: 'tubes'; readonly tubes: 'onto' | 'into' }
  /** A kind of wrapped panel, by its place in the model's list of patterns. */
  | { readonly on: 'pattern'; readonly index: number }
  /** A kind of flat panel, by its place in the model's list; lettered where there are several. */
  | { readonly on: 'plates'; readonly index: number; readonly letter: string | null }
  /** The wall that the whole item is fixed to; on a board it is not. */
  | { readonly on: 'wall'; readonly wall: WallKind }
  /** One flat panel, on one side of the item where it is on one. */
  | { readonly on: 'plate'; readonly plate: string; readonly side: Side | null };

/** How the work lies. */
export type StandingName = 'bench' | 'lying' | 'upright';

/** What is done on the bench before anything is put together. */
export type BenchWork =
  | 'cut-tubes' | 'cap-ends' | 'cut-blank' | 'mark-inside' | 'mark-creases' | 'mark-notches' | 'punch-holes' | 'cut-notches' | 'crease' | 'half-cut'
  | 'cut-panel' | 'mark-posts';

/** What is done while things are put together, by what it closes. */
export type Joining =
  /** Tubes and joints pushed into one another, one socket a piece; and a piece that meets several sockets at once. */
  | 'push' | 'close'
  /** Bars pushed through sleeves, and work slid onto bars. */
  | 'push-through' | 'slide-on'
  /** A panel under the frame that is wrapped with it; a flat panel on its bars. */
  | 'lay-frame' | 'lay-panel'
  /** Walls and corner tabs of a box, the pins of its corners, and the frame put over it. */
  | 'turn-up' | 'pin-corners' | 'set-in'
  | 'wrap' | 'punch-tab' | 'pin-side'
  | 'drill' | 'pin'
  | 'hang'
  /** A cap, a foot, a hinge, a bracket. */
  | 'fit'
  | 'turn';

/** What the search of an order tells apart; a kind of work is one of these with what it is done on. */
export type Doing = BenchWork | Joining;

/** A piece of work as the rules see it. */
export interface PlannedWork {
  readonly does: Doing;
  /** Identical sub-assemblies it is done on, or null for the item as a whole. */
  readonly batch: string | null;
  readonly onBench: boolean;
  readonly side: Side | null;
}

/** Picks work. */
export type Pick = (work: PlannedWork) => boolean;

/** An ordering: all work that `first` picks before all work that `then` picks. */
export interface Rule {
  readonly name: string;
  readonly reason: string;
  /** The work itself asks for it: a cut panel before a creased one, a hole before its pin. No wish overrides it. */
  readonly firm: boolean;
  /** Holds in one batch, on one side of one batch, where the same parts are taken apart, or everywhere. */
  readonly within: 'batch' | 'side' | 'place' | 'item';
  readonly first: Pick;
  readonly then: Pick;
}

/** What a panel that is wrapped has that asks for work on the bench. */
export interface PanelFeatures {
  readonly creases: boolean;
  readonly halfCuts: boolean;
  /** Punched in the flat panel, for pins or for the round corners of its notches. */
  readonly holes: boolean;
  /** Its blank is no rectangle: corners are cut out of it. */
  readonly corners: boolean;
}

/** Things that work takes beside the item's parts. Key under `parts` in the locale files. */
export type SupplyName = 'tube-cap' | 'wall-bracket' | 'wall-screw' | 'wall-plug' | 'wall-cord';

/** Some of one such thing. */
export interface Supply {
  readonly name: SupplyName;
  readonly shape: Shape;
  readonly count: number;
  /** It has a thread: drawn as a wood screw. */
  readonly isThreaded?: true;
  /** What pages tell of its size, mm: a diameter, or a diameter and a length; none where it comes in one size. */
  readonly size: readonly number[];
}

/** Diameters of a tool's bits or blades that are needed, mm. */
export type ToolSizes = Partial<Readonly<Record<Tool, readonly number[]>>>;

/** All that is known of a kind of work but for its pictures. What is left out does not hold of it. */
export interface WorkFacts {
  readonly tools: readonly Tool[];
  /** Tools that it does not take, by what it is done on; none when left out. */
  readonly without?: (detail: StepDetail, model: Model) => readonly Tool[];
  readonly people: 1 | 2;
  readonly cautions: readonly Caution[];
  /** The second person holds all that is there while it is done: it sways. */
  readonly sways?: true;
  /** None where there is nothing to be done wrong that one could see. */
  readonly check: WorkerCheck | null;
  /** The check by what it is done on; the same for all when left out. */
  readonly checkOf?: (detail: StepDetail, model: Model) => WorkerCheck | null;
  /** For one worker or pair, once. */
  readonly minutes: number;
  /** Share of its minutes that it takes, by what it is done on; all of them when left out. */
  readonly shareOf?: (detail: StepDetail, model: Model) => number;
  /** Share of its minutes that each further piece takes, the first being its pattern; all of them when left out. */
  readonly traced?: number;
  /** Minutes that must pass when it is done before the work goes on: until glue is dry. */
  readonly waits: number;
  /** Bench work on a panel that is wrapped: whether one with these features asks for it, in the catalogue's order. */
  readonly askedByPanel?: (features: PanelFeatures) => boolean;
  /** A trainer does all of it the day before a workshop, because it is dusty and slow to teach; or makes one sample to show. */
  readonly prepared?: 'all' | 'sample';
  /** Tried on waste, once, before it is done on the pieces: so many of its first pictures show the trial. */
  readonly triedIn?: number;
  /** The chapter before the steps that shows it, to be looked at. */
  readonly shownIn?: 'lengths' | 'pattern' | 'creasing' | 'plates';
  /** What it has done springs back until that is done too: of several alike, one is taken so far before the next is begun. */
  readonly springsBackUntil?: Joining;
  /** Whose number its caption tells. */
  readonly counts?: readonly PartKind[];
  /** Which of its captions is said, by what it is done on: the last part of the key under `actions.<action>`. */
  readonly captionOf?: (detail: StepDetail) => string;
  /** Parts that are to hand although it brings none. */
  readonly toHand?: PartKind;
  /** What it takes beside the item's parts. */
  readonly supplies?: (model: Model, detail: StepDetail) => readonly Supply[];
  /** Diameters of the bits and punches that it takes. */
  readonly sizes?: (model: Model, detail: StepDetail) => ToolSizes;
  /** What must come before what, with the reason. */
  readonly rules?: readonly Rule[];
}
