import type { Catalogue } from './catalogue/types.ts';
import type { Position } from './position.ts';
import type { Structure } from './structure/types.ts';

export type { Position } from './position.ts';

/** A problem in a file, as the reader of the message needs it. */
export interface Fault {
  readonly position: Position;
  /** Dotted path of the field, for example `sizes.standard.width`. */
  readonly field: string;
  readonly found: string;
  readonly remedy: string;
}

/** All lengths mm, forces N, stresses N/mm², angles rad, masses kg, densities kg/mm³. */
export interface Kit {
  readonly name: string;
  readonly panel: {
    readonly length: number;
    readonly width: number;
    readonly thickness: number;
    readonly skin: number;
    readonly neutralLayer: number;
    readonly tightestCrease: number;
    readonly density: number;
    readonly skinModulus: number;
    readonly skinStrength: number;
    readonly coreShearModulus: number;
    readonly coreShearStrength: number;
    readonly usedStockFactor: number;
  };
  readonly tube: {
    readonly outsideDiameter: number;
    readonly wall: number;
    readonly length: number;
    readonly density: number;
    readonly modulus: number;
    readonly bendingStrength: number;
    readonly bearingStrength: number;
    readonly usedStockFactor: number;
  };
  readonly joint: {
    readonly sleeveDiameter: number;
    readonly sleeveAbove: number;
    readonly sleeveBelow: number;
    readonly bore: number;
    readonly socketDiameter: number;
    readonly socketDepth: number;
    readonly stop: number;
    readonly endPlay: number;
    readonly studDiameter: number;
    readonly studReach: number;
    readonly studHeadDiameter: number;
    readonly studHead: number;
    readonly pinHeight: number;
    readonly mass: number;
  };
  readonly panelPin: {
    readonly diameter: number;
    readonly length: number;
    readonly headDiameter: number;
    readonly headHeight: number;
  };
  readonly jointPin: {
    readonly diameter: number;
    readonly length: number;
    readonly headDiameter: number;
    readonly headHeight: number;
    readonly strength: number;
    readonly wingSpan: number;
    readonly nutHeight: number;
  };
  readonly cable: {
    readonly diameter: number;
    readonly length: number;
    readonly stiffness: number;
    readonly strength: number;
  };
  readonly practice: {
    readonly insideGap: number;
    readonly wrapClearance: number;
    readonly turnBack: number;
    readonly tab: number;
    readonly pinEdge: number;
    readonly punching: PunchingPractice;
    readonly pinEnd: number;
    readonly pinPitch: number;
    readonly notchGap: number;
    readonly notchRadius: number;
    readonly tabCorner: number;
    readonly sawKerf: number;
    readonly knifeKerf: number;
  };
  /** Further kinds of parts, each under a name. */
  readonly catalogue: Catalogue;
  /** What one joint bore in the makers' own test, N, and how far it slid, mm; left out where nobody tested one. */
  readonly jointTest?: { readonly load: number; readonly slip: number };
  /** Whether the kit has caps for open tube ends and for studs that no cable uses; none where left out. */
  readonly caps?: { readonly tubeEnds: boolean; readonly studs: boolean };
  /** Limits of the checks by local rules, in their base units, each with the rule that it is from. */
  readonly localLimits?: { readonly [name in LocalLimitName]?: LocalLimit | undefined };
  /** How many of each part a whole kit has; left out where nobody counted. */
  readonly contents?: {
    readonly panels: number;
    readonly tubes: number;
    readonly joints: number;
    readonly panelPins: number;
    readonly jointPins: number;
    readonly wingNuts: number;
    readonly cables: number;
  };
}

/** A limit that is known from memory alone and that local rules may set. */
export type LocalLimitName = 'factorOfSafety' | 'seatTest' | 'pad' | 'spread' | 'guardPush' | 'tubeShear' | 'screenDriftRatio' | 'screenFactor' | 'creepSkin' | 'creepCore' | 'lidFactor' | 'lidLift' | 'hingeLeast' | 'hingeMost' | 'ventArea';

export interface LocalLimit {
  readonly value: number;
  readonly source: string;
}

/** When the holes of a tab's pins are punched: in the flat panel, or through tab and panel where they lie. */
export type PunchingPractice = 'after-wrapping' | 'flat';

/** How the workshop builds. */
export type Practice = Kit['practice'];

/** What a value of a parameter or expression measures. */
export type Dimension = 'length' | 'angle' | 'force' | 'mass' | 'count' | 'ratio';

/** A number in the base unit of its dimension (mm, rad, N, kg, 1). */
export interface Quantity {
  readonly value: number;
  readonly dimension: Dimension;
}

export interface Parameter {
  readonly name: string;
  readonly least: Quantity;
  readonly most: Quantity;
  readonly whole: boolean;
  readonly purpose: string;
}

/** An expression of the file, checked and ready to evaluate: lengths in mm, angles in rad. */
export interface Expression {
  readonly text: string;
  readonly position: Position;
  /** Throws a FaultError when a name is unknown, a dimension is wrong or the result is not finite. */
  readonly evaluate: (names: Readonly<Record<string, Quantity>>) => Quantity;
}

/** A deck: four tubes in four corner joints with a panel wrapped on, `count` of them one over the other. */
export interface DeckPiece {
  readonly is: 'deck';
  readonly name: string;
  readonly width: Expression;
  readonly depth: Expression;
  readonly count: Expression;
  /** Height of the deck's upper face over the floor; `index` counts from 0. */
  readonly top: Expression;
}

/** A frame of bare tubes in corner joints round some or all sides of the four posts; `count` of them. */
export interface FramePiece {
  readonly is: 'frame';
  readonly name: string;
  readonly width: Expression;
  readonly depth: Expression;
  readonly count: Expression;
  /** Height of the tubes' axes over the floor; `index` counts from 0. */
  readonly level: Expression;
  /** The sides that have a tube, all four unless the file says otherwise. */
  readonly sides: readonly Face[];
}

/** Four posts at the corners, through every joint of the pieces they go through. */
export interface PostPiece {
  readonly is: 'post';
  readonly name: string;
  /** Lengths of the two front and the two back posts; the file may give one `length` for all four. */
  readonly front: Expression;
  readonly back: Expression;
  readonly through: readonly string[];
}

/**
 * A flat panel pinned upright on two tubes of one side, from the tube of `from` to the tube of `to`
 * (pieces, or the lowest and highest of a repeated piece). It stands on the inner face of the tubes.
 */
export interface PanelPiece {
  readonly is: 'panel';
  readonly name: string;
  /** The sides that get one; more than one is the same panel mirrored or turned. */
  readonly on: readonly Face[];
  readonly from: string;
  readonly to: string;
}

export type Piece = DeckPiece | FramePiece | PostPiece | PanelPiece;

/** What the item is used for: decides which loads and stability checks apply. */
export type Use = 'storage' | 'table' | 'seat' | 'bed';

/** Where it stands: nothing here is calculated for wind, wet and sun. */
export type Setting = 'indoors';

/** What the wall is made of that storage is fixed to where it must be; a board alone holds nothing. */
export type WallKind = 'masonry' | 'timber' | 'board';

/** Who uses it: `anyone` is adults and children, `small-children` are those who walk and sleep in a low bed. */
export type People = 'adults' | 'anyone' | 'pupils' | 'small-children';

/** The mattress a bed is made for, mm. */
export interface Mattress {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

/** What the item file says of its use: a mark for pupils only, a mattress for beds only. */
export interface Declares {
  readonly place: Setting;
  readonly wall: WallKind;
  readonly people: People;
  readonly mark: Expression | null;
  readonly mattress: { readonly [side in keyof Mattress]: Expression } | null;
}

/** The same, worked out for one size; `mark` is the size mark of EN 1729-1. */
export interface Declared {
  readonly place: Setting;
  readonly wall: WallKind;
  readonly people: People;
  readonly mark: number | null;
  readonly mattress: Mattress | null;
}

export type Face = 'back' | 'left' | 'right' | 'front';

export type Connection =
  /** Posts `piece` pinned to the decks and frames `to`. */
  | { readonly kind: 'pin'; readonly piece: string; readonly to: readonly string[]; readonly position: Position }
  /** Crossed cables from the lowest of `piece` to the highest of `to`, or of `piece` itself when `to` is null. */
  | { readonly kind: 'brace'; readonly piece: string; readonly to: string | null; readonly faces: readonly Face[]; readonly position: Position };

/** The designer's own wish for the order: one kind of work before another. */
export interface OrderWish {
  readonly first: string;
  readonly then: string;
  readonly because: string;
  readonly position: Position;
}

/** One validated item file. `sizes` holds every parameter in its base unit for each size variant. */
export interface Item {
  readonly name: string;
  readonly kit: Kit;
  readonly use: Use;
  readonly declares: Declares;
  readonly revision: number;
  readonly parameters: readonly Parameter[];
  readonly expressions: readonly { readonly name: string; readonly expression: Expression }[];
  readonly sizes: readonly { readonly name: string; readonly values: Readonly<Record<string, Quantity>> }[];
  readonly pieces: readonly Piece[];
  readonly connections: readonly Connection[];
  readonly order: readonly OrderWish[];
  /** Each size written out, where the file tells points and bars or places of use. */
  readonly structures: Readonly<Record<string, Structure>>;
  /** Path of the item file as given, and a SHA-256 over the texts of item and kit. */
  readonly source: { readonly file: string; readonly sha256: string };
}

/** A rectangle of a stock panel not to be used, from the panel's lower left corner, mm. */
export interface StockDefect {
  readonly is: 'hole' | 'broken-corner' | 'rib' | 'seam' | 'other';
  /** The corner it was measured from. */
  readonly corner: 'lower-left' | 'lower-right' | 'upper-left' | 'upper-right';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Stock panels alike, the longer side from left to right, mm. */
export interface StockPanel {
  readonly name: string;
  readonly count: number;
  readonly length: number;
  readonly width: number;
  /** The side its grain or flutes run along; null where any way will do. */
  readonly grain: 'length' | 'width' | null;
  readonly defects: readonly StockDefect[];
}

/** Stock tubes alike, mm. */
export interface StockTube {
  readonly name: string;
  readonly count: number;
  readonly length: number;
  /** So much of one end is not to be used. */
  readonly notFromEnd: number;
  readonly cracked: boolean;
}

/** What was counted of retired structures. */
export interface Stock {
  readonly name: string;
  /** Name of the kit file the parts came from. */
  readonly kit: string;
  readonly note: string | null;
  readonly tubes: readonly StockTube[];
  readonly panels: readonly StockPanel[];
  readonly cables: readonly { readonly name: string; readonly count: number; readonly length: number }[];
  readonly joints: number;
  readonly panelPins: number;
  readonly jointPins: number;
  readonly wingNuts: number;
}
