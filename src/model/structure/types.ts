import type { PanelKind, Position, TubeKind } from '../../read/index.ts';
import type { Laid } from '../joints/choose.ts';
import type { Connection, Part, PartKind, PartPlace, Vec3 } from '../types.ts';

/** Where the file tells of a part, for faults that only building it shows. */
export interface Told {
  readonly position: Position;
  readonly field: string;
}

/** What the part of a blueprint becomes in the model. */
export interface Labelled {
  readonly id: string;
  readonly kind: PartKind;
  readonly place: PartPlace;
  readonly group: string | null;
  readonly told: Told;
}

/** How the pins of a bar are called: through the joints it runs through, counted from 1 along it. */
export type PinLabels = (index: number) => { readonly pin: string; readonly nut: string; readonly place: PartPlace };

/** A tube to be, from point to point; shorter at ends that go into a socket. */
export interface PlannedBar extends Labelled {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly through: readonly Vec3[];
  readonly tube: TubeKind;
  readonly pinned: boolean;
  /** The way its own y is to look, as far as it stands square to the bar. */
  readonly side: Vec3;
  readonly pins: PinLabels;
}

export type PlannedPanel = Labelled & { readonly panel: PanelKind; /** The side of the bars it lies on. */ readonly face: Vec3; readonly pins: (flap: string, index: number) => { readonly id: string; readonly nut: string; readonly place: PartPlace } } & (
  | { readonly is: 'wrapped'; readonly loop: readonly string[]; readonly wrap: readonly string[] }
  | { readonly is: 'flat'; readonly on: readonly string[]; readonly pinned: boolean; readonly length: number | null; readonly over: number | null; readonly lift: number }
  | { readonly is: 'tray'; readonly loop: readonly string[]; readonly wrap: readonly string[]; readonly depth: number }
);

export interface PlannedCable extends Labelled {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly face: Vec3;
}

export interface PlannedFitting extends Labelled {
  readonly fitting: string;
  readonly bar: string;
  /** On the bar's axis. */
  readonly at: Vec3;
  readonly panel: string | null;
  readonly face: Vec3 | null;
}

/** A joint that a short form names and fixes the kind of. */
export interface PlannedJoint {
  readonly at: Vec3;
  readonly kind: string | null;
  readonly id: string;
  readonly place: PartPlace;
  readonly group: string | null;
}

/** An item of one size as points and what runs between them: all that is built comes of it. */
export interface Blueprint {
  readonly bars: readonly PlannedBar[];
  readonly joints: readonly PlannedJoint[];
  readonly panels: readonly PlannedPanel[];
  readonly cables: readonly PlannedCable[];
  readonly fittings: readonly PlannedFitting[];
  /** A short form whose parts are too small for one another is built all the same: its checks of fit tell it. */
  readonly isLenient: boolean;
  /** How a joint is called that no short form names, by its place. */
  readonly jointAt: (at: Vec3) => { readonly id: string; readonly place: PartPlace };
}

/** A point where parts meet, with the joint that was chosen for it. */
export interface Node {
  readonly at: Vec3;
  readonly joint: { readonly id: string; readonly place: PartPlace; readonly group: string | null; readonly laid: Laid } | null;
}

/** One end of a bar: the joint it ends in, if any, and how far its socket takes the tube in. */
export interface BarEnd {
  readonly joint: string | null;
  readonly stop: number;
  readonly depth: number;
}

/** A part of the bar that a joint covers, in mm from its beginning. */
export interface Covered {
  readonly from: number;
  readonly to: number;
}

/** A tube with its ends and what covers it. */
export interface BuiltBar {
  readonly plan: PlannedBar;
  readonly axis: Vec3;
  readonly length: number;
  /** From point to point. */
  readonly span: number;
  readonly ends: readonly [BarEnd, BarEnd];
  readonly covered: readonly Covered[];
  /** From the bar's own coordinates to the item's. */
  readonly part: Part;
}

/** Parts and how they hold, as every builder of a kind of part gives them. */
export interface Made {
  readonly parts: readonly Part[];
  readonly connections: readonly Connection[];
}
