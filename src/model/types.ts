import type { Face, FittingKind, JointKind, Kit, Place, Quantity, Use } from '../read/index.ts';

export type Vec2 = readonly [number, number];
export type Vec3 = readonly [number, number, number];

/** A rigid pose: 16 numbers, column by column, as in three's `Matrix4.elements`. Lengths in mm. */
export type Pose = readonly number[];

/** A closed triangle mesh, wound so that normals point outwards. Positions in mm, x y z by turns. */
export interface Mesh {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}

export type PartKind =
  | 'long-tube'
  | 'short-tube'
  | 'post'
  | 'joint'
  | 'panel'
  | 'flat-panel'
  | 'panel-pin'
  | 'joint-pin'
  | 'wing-nut'
  | 'cable'
  | 'bar'
  | 'fitting';

export type Side = 'left' | 'right' | 'front' | 'back';

/** The face of a panel that its pattern is drawn on (the inner one of a panel that is folded), or the other. */
export type PunchedFace = 'drawn' | 'other';

/** A round hole in a panel, mm. */
export interface PanelHole {
  readonly at: Vec2;
  readonly diameter: number;
  /** How deep it goes in from its face; null where it goes right through. A pin ends in a blind one: the far skin stays whole. */
  readonly depth: number | null;
  readonly face: PunchedFace;
  /** While the panel lies flat; or through tab and panel where they lie, when its flap is wrapped. */
  readonly punched: 'flat' | 'wrapped';
}

/** A hole of a flat panel: a blind one comes from the marked face. */
export type PlateHole = Pick<PanelHole, 'at' | 'diameter'> & { readonly depth?: number };

/** A flap of the flat panel. Distances are measured on the flat panel, outwards from the inside line. */
export interface Flap {
  readonly side: Side;
  /** Distance of each crease from the inside line, in mm, in order of creasing. */
  readonly creases: readonly number[];
  /** How far each crease turns, in rad. */
  readonly creaseAngle: number;
  readonly halfCut: number;
  /** Distance of the tab's free edge from the inside line. */
  readonly edge: number;
  /** How far the tab turns back, in rad. */
  readonly turnBack: number;
  /** Ends of the flap along its side, in panel coordinates (x for front and back, y for left and right). */
  readonly from: number;
  readonly to: number;
  /** Length of the 45° snip off each corner of the tab, in mm along the edge. */
  readonly corner: number;
  /** Places of the pins along the side, in panel coordinates: both ends first, then the middle ones. */
  readonly pins: readonly number[];
  /** Distance of the pin line from the inside line on the flat tab. */
  readonly pinLine: number;
  /** Widest gap between tube and panel, in mm. */
  readonly widestGap: number;
}

/**
 * The flat pattern of a wrapped panel, inner face up. Origin in the middle of the panel, x along the
 * long tubes (width), y along the short tubes (depth), in mm.
 */
export interface FlatPattern {
  readonly thickness: number;
  readonly skin: number;
  /** k: share of the thickness, from the inner face, that keeps its length in a crease. */
  readonly neutralLayer: number;
  /** Radius of the inner face round the tube's axis, D/2 + c. */
  readonly wrapRadius: number;
  /** Sides of the blank before notching. */
  readonly blank: Vec2;
  /** Half sides of the inside rectangle, the first lines marked. */
  readonly inside: Vec2;
  /** Half distances between the axes of opposite tubes. */
  readonly axes: Vec2;
  readonly flaps: readonly Flap[];
  /** Side of the square notch at each corner, measured from the blank's corner along x and y. */
  readonly notch: Vec2;
  readonly notchRadius: number;
  /** Every pin hole: in the tab, and below it in the middle part. */
  readonly holes: readonly (PanelHole & { readonly side: Side; readonly in: 'tab' | 'base' })[];
  /** The outline after notching and snipping, anticlockwise, with the notch's round corner as short straights. */
  readonly outline: readonly Vec2[];
}

/** Where a panel bends along a line, `at` mm outwards from the flap's root line, by `turn` rad towards its inner face (or away, below nought). */
export interface Bend {
  readonly at: number;
  readonly turn: number;
  /** A crease is pressed in; a half-cut leaves but one skin, on the side the panel turns away from. */
  readonly is: 'crease' | 'half-cut';
}

/** A part of a flap between two distances from its root line and two places along it. */
export interface Strip {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
}

/** A tab at the end of a tray's wall, turned round the corner onto the next wall. */
export interface Lug {
  readonly name: string;
  /** At the end of the wall towards −1 or +1 along its side. */
  readonly end: -1 | 1;
  /** Distances of its bends from the middle of the wall along the side, mm. */
  readonly bends: readonly Bend[];
  /** Its free edge, from the middle of the wall. */
  readonly edge: number;
  /** Between these distances from the wall's root line. */
  readonly from: number;
  readonly to: number;
  /** Pins along the wall's height, as distances from the root line, and their line as a distance from the middle of the wall. */
  readonly pins: readonly number[];
  readonly pinLine: number;
}

/** A flap of a pattern: what stands out from one side and is folded, from its root line outwards. Lengths mm on the flat panel. */
export interface PatternFlap {
  /** Names it in its pattern; says nothing. */
  readonly name: string;
  readonly side: Side;
  /** From the middle of the panel to the root line: the axis of the bar it goes round, or the line where a wall begins. */
  readonly root: number;
  /** From the root line to the line that is marked first, and that all lines of the flap are measured from: inwards, below nought, where a bar lies on the root line. */
  readonly line: number;
  /** Outwards. Those before `wall` turn up a tray's wall; the others go round a bar. */
  readonly bends: readonly Bend[];
  readonly wall: number;
  /** The order in which the bends are made, as places in `bends`. */
  readonly order: readonly number[];
  /** Distance of the free edge from the root line. */
  readonly edge: number;
  readonly strips: readonly Strip[];
  /** Length of the 45° snip off each corner of the tab, mm. */
  readonly corner: number;
  /** Pins of its tab along the side, ends first, and their line, from the root line; none where it has no tab. */
  readonly pins: readonly number[];
  readonly pinLine: number;
  readonly lugs: readonly Lug[];
  /** Widest gap between bar and panel, mm; 0 where it goes round none. */
  readonly widestGap: number;
}

/** A hole of a pattern, in a tab or lug (by the flap's name) or the middle part. */
export interface PatternHole extends PanelHole {
  readonly flap: string | null;
}

/**
 * The flat pattern of one panel, inner face up: x to the right, y to the back in its own coordinates, origin in the middle
 * between the bars. Panels of one pattern are cut alike.
 */
export interface Pattern {
  readonly form: 'wrapped' | 'flat' | 'tray';
  /** A panel of the kit. */
  readonly panel: string;
  readonly thickness: number;
  readonly skin: number;
  readonly neutralLayer: number;
  /** Corners of the box round the whole blank. */
  readonly min: Vec2;
  readonly max: Vec2;
  /** The whole outline, anticlockwise, round corners as short straights. */
  readonly outline: readonly Vec2[];
  /** The middle part up to where the flaps begin, anticlockwise. */
  readonly base: readonly Vec2[];
  readonly flaps: readonly PatternFlap[];
  readonly holes: readonly PatternHole[];
}

/** A pattern with the parts that are cut so. */
export interface CutPattern extends Pattern {
  readonly partIds: readonly string[];
}

/** How far each flap is folded: 0 flat … 1 done. */
export type Folding = Readonly<Record<Side, number>>;

/** What a part looks like, as plain numbers (mm). Own coordinates are told with each form. */
export type Shape =
  /** Along +x from −length/2 to +length/2, middle line on the x axis. */
  | { readonly form: 'tube'; readonly length: number; readonly outside: number; readonly inside: number; /** Holes across the tube, along y or turned from it about x by `turn` rad, `at` mm from its middle. */ readonly holes: readonly { readonly at: number; readonly diameter: number; readonly turn?: number }[]; /** Round unless told; then `outside` and `inside` are measured from face to face. */ readonly profile?: 'square' }
  /** Sleeve along z with the deck side up, sockets along +x and +y, studs along −x and −y, middle of the tubes at z = 0. */
  | { readonly form: 'joint'; readonly joint: Kit['joint']; readonly pinDiameter: number; /** The axis the pin hole is drilled along, or null before drilling. */ readonly drilled: 'x' | 'y' | null }
  /** A joint told by its ports, in its own axes, with the holes for its pins. */
  | { readonly form: 'ported-joint'; readonly joint: JointKind; readonly pinDiameter: number; readonly drilled: readonly { readonly at: Vec3; readonly along: Vec3 }[] }
  /** A small part of the kit. A plug goes up +z from 0 into a tube of that inside; a clip lies round x on a tube of that outside, open to −z, with its leaf above; a bracket's clip lies round z, open to −y, its plate at +y. */
  | { readonly form: 'fitting'; readonly fitting: FittingKind; readonly outside: number; readonly inside: number }
  /** Inner face in the plane z = 0, as `panel`, with any number of flaps, each folded from 0 to 1 by its name. */
  | { readonly form: 'folded'; readonly pattern: Pattern; readonly folding: Readonly<Record<string, number>>; /** Just these flaps and corner tabs, or all but them; the whole panel when left out. */ readonly split?: { readonly flaps: readonly string[]; readonly piece: 'flap' | 'rest' } }
  /** Inner face in the plane z = 0, flaps rise to +z. */
  | { readonly form: 'panel'; readonly pattern: FlatPattern; readonly folding: Folding; /** Just one flap, or all but that flap; the whole panel when left out. */ readonly split?: { readonly side: Side; readonly piece: 'flap' | 'rest' } }
  /** Shank along −z from 0, head along +z. */
  | { readonly form: 'pin'; readonly diameter: number; readonly length: number; readonly headDiameter: number; readonly headHeight: number }
  /** Bore along z, from z = 0 to z = height, wings along ±x. */
  | { readonly form: 'wing-nut'; readonly bore: number; readonly span: number; readonly height: number }
  /** Flat in x and y, middle of the lower face at the origin. */
  | { readonly form: 'plate'; readonly width: number; readonly height: number; readonly thickness: number; readonly holes: readonly PlateHole[] }
  /** Along x, middle of the lower face at the origin: a line on a face. */
  | { readonly form: 'strip'; readonly length: number; readonly width: number; readonly height: number }
  /** A patch on a face: its outline in x and y, anticlockwise, lower face at z = 0. */
  | { readonly form: 'patch'; readonly outline: readonly Vec2[]; readonly height: number }
  /** From one loop's middle at the origin to the other's at (length, 0, 0); loops round z. */
  | { readonly form: 'cable'; readonly diameter: number; readonly length: number; readonly loopInside: number };

/** One of the item's four corners. */
export interface CornerPlace {
  readonly x: 'left' | 'right';
  readonly y: 'front' | 'back';
}

/** Where a part sits in what it belongs to. Indices count from 1. */
export type PartPlace =
  /** A tube of a deck or frame, or a flat panel. */
  | { readonly at: 'side'; readonly side: Side }
  /** A joint or a post. */
  | { readonly at: 'corner'; readonly corner: CornerPlace }
  /** The panel under a deck's frame. */
  | { readonly at: 'base' }
  /** A pin of a wrapped panel, in the order in which the side's pins are put in. */
  | { readonly at: 'tab'; readonly side: Side; readonly index: number }
  /** A pin through a post and a joint, and its nut, counted from the foot. */
  | { readonly at: 'sleeve'; readonly corner: CornerPlace; readonly index: number }
  /** A pin through a flat panel and a tube, and its nut. */
  | { readonly at: 'plate'; readonly plate: string; readonly tube: 'low' | 'high'; readonly index: number }
  /** A cable. */
  | { readonly at: 'face'; readonly face: Face; readonly index: number }
  /** A part of a structure, by its name and indexes in the file. */
  | { readonly at: 'named'; readonly name: string; readonly index: readonly number[] }
  /** A joint of a structure. */
  | { readonly at: 'point'; readonly point: string }
  /** A pin or nut, counted on the bar or panel that it is for. */
  | { readonly at: 'part'; readonly part: string; readonly index: number };

export interface Part {
  /** Names the part in its item; what it is and where it sits is told by the other fields alone. */
  readonly id: string;
  readonly kind: PartKind;
  readonly shape: Shape;
  /** From the part's own coordinates to the finished item's (z up, floor at 0, front towards −y). */
  readonly pose: Pose;
  readonly place: PartPlace;
  /** The sub-assembly it belongs to (`deck-1`), or null. */
  readonly group: string | null;
  readonly mass: number;
}

/** A deck or a bare frame. Identical ones are made in one run; the first one stands for all in the pictures. */
export interface Group {
  readonly name: string;
  readonly piece: string;
  readonly kind: 'deck' | 'frame';
  /** Sides of the finished item that have a tube. */
  readonly sides: readonly Face[];
  /** Height of the tubes' axes over the floor, mm. */
  readonly level: number;
  /** From its own building pose (a deck upside down on its panel, a frame as it is used) to the finished item. */
  readonly pose: Pose;
  readonly partIds: readonly string[];
}

/** Parts that hold each other, by their ids. */
export type Joining =
  /** A tube pushed into a joint. */
  | { readonly by: 'socket'; readonly joint: string; readonly tube: string }
  /** A tab held to the panel it belongs to. */
  | { readonly by: 'tab-pin'; readonly pin: string; readonly panel: string }
  | { readonly by: 'post-pin'; readonly pin: string; readonly nut: string; readonly post: string; readonly joint: string }
  | { readonly by: 'plate-pin'; readonly pin: string; readonly nut: string; readonly plate: string; readonly tube: string }
  /** A cable round a stud of each of two joints, the lower one first. */
  | { readonly by: 'cable'; readonly cable: string; readonly joints: readonly [string, string] };

/** The joinings of one kind. */
export type JoiningBy<By extends Joining['by']> = Extract<Joining, { readonly by: By }>;

/**
 * Parts that hold each other, told as the freedom they leave. Directions are unit vectors in the finished item's
 * coordinates; ids and the flaps' names are opaque. All connections of an item make its parts one connected whole.
 */
export type Connection =
  /** The bar's end in a socket of the joint, `depth` mm deep; the bar leaves along `out`. */
  | { readonly is: 'socket'; readonly bar: string; readonly joint: string; readonly out: Vec3; readonly depth: number }
  /** The bar runs through the joint's sleeve: free both ways along it until pinned. */
  | { readonly is: 'sleeve'; readonly bar: string; readonly joint: string; readonly along: Vec3 }
  /** A pin with its nut through what it holds; the pin leaves along `out`, its nut the other way. */
  | { readonly is: 'pin'; readonly pin: string; readonly nut: string; readonly holds: readonly string[]; readonly out: Vec3 }
  /** A barbed pin through a flap's tab into the panel. */
  | { readonly is: 'panel-pin'; readonly pin: string; readonly panel: string; readonly flap: string; readonly out: Vec3 }
  /** A panel's face on a bar; the panel leaves along `out`. */
  | { readonly is: 'lay'; readonly panel: string; readonly bar: string; readonly out: Vec3 }
  /** A flap folded round a bar. */
  | { readonly is: 'wrap'; readonly panel: string; readonly flap: string; readonly bar: string }
  /** A cable's loop on a stud of the joint; the loop slips off along `out`. */
  | { readonly is: 'hook'; readonly cable: string; readonly joint: string; readonly out: Vec3 }
  | { readonly is: 'cap'; readonly cap: string; readonly bar: string; readonly out: Vec3 }
  /** A foot plate or castor in the end of a bar. */
  | { readonly is: 'foot'; readonly foot: string; readonly bar: string; readonly out: Vec3 }
  /** A panel and the bar it turns about, along `axis` through `at` (mm). The hinge comes off the bar along `out`; the panel comes off the hinge that way. */
  | { readonly is: 'hinge'; readonly hinge: string; readonly leaves: readonly [string, string]; readonly axis: Vec3; readonly at: Vec3; readonly out: Vec3 }
  | { readonly is: 'bracket'; readonly bracket: string; readonly bar: string; readonly out: Vec3 };

/** A named length of the finished item, for the lettered drawing and the table of variants. */
export interface NamedLength {
  /** From P on: those from A on name pieces of tube. */
  readonly letter: string;
  /** Key under `dimensions` in the locale files. */
  readonly name: string;
  readonly value: number;
  readonly from: Vec3;
  readonly to: Vec3;
}

/** A flat rectangular panel with its pin holes, from its lower left corner, mm, as it lies on the bench with its marked face up. */
export interface FlatPanel {
  /** Which face of the panel in its place is marked: the lower where blind holes come from that, so that it is worked from one face alone. Turned left to right it lies as it does in its place. */
  readonly marked: 'upper' | 'lower';
  readonly width: number;
  readonly height: number;
  readonly thickness: number;
  readonly skin: number;
  readonly holes: readonly PlateHole[];
  readonly partIds: readonly string[];
}

/** A tube to cut: its length, how many, and the share of a stock tube when it is a plain fraction. */
export interface TubeNeed {
  readonly kind: 'long-tube' | 'short-tube' | 'post' | 'bar';
  readonly length: number;
  readonly count: number;
}

/** One size variant of an item, complete. */
export interface Model {
  readonly item: string;
  readonly size: string;
  readonly use: Use;
  readonly kit: Kit;
  readonly parameters: Readonly<Record<string, Quantity>>;
  readonly parts: readonly Part[];
  readonly groups: readonly Group[];
  readonly joinings: readonly Joining[];
  readonly connections: readonly Connection[];
  /** The first wrapped panel's, as if it were folded round all four sides. */
  readonly pattern: FlatPattern;
  /** Every panel's, alike ones together. */
  readonly patterns: readonly CutPattern[];
  /** What the panels are used for, each with its parts. */
  readonly places: readonly Place[];
  /** Flat panels to cut, each with the parts cut so. */
  readonly plates: readonly FlatPanel[];
  readonly dimensions: readonly NamedLength[];
  readonly tubes: readonly TubeNeed[];
  readonly bracedFaces: readonly Face[];
  /** Heights of the decks' upper faces, in mm, from the lowest. */
  readonly deckTops: readonly number[];
}
