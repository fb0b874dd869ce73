/** A direction in a part's own coordinates, of length 1. */
export type Axis = readonly [number, number, number];

/** A mouth of a joint, told from the joint's middle, where the axes of all its tubes meet. Lengths in mm. */
export type Port =
  /** A tube's end goes `depth` deep into it, and stops `stop` short of the middle. */
  | { readonly is: 'socket'; readonly axis: Axis; readonly depth: number; readonly stop: number }
  /** A tube runs through; the ring reaches `above` along the axis and `below` the other way, and is drilled `pin` below. */
  | { readonly is: 'sleeve'; readonly axis: Axis; readonly above: number; readonly below: number; readonly pin: number }
  /** A cable's loop goes over it; `head` is the thickness of the head at its end. */
  | { readonly is: 'stud'; readonly axis: Axis; readonly reach: number; readonly diameter: number; readonly head: number; readonly headDiameter: number };

export type Profile = 'round' | 'square';

/** One kind of joint of a kit. */
export interface JointKind {
  readonly name: string;
  /** What its sockets and sleeves take in. */
  readonly profile: Profile;
  readonly bore: number;
  readonly sleeveDiameter: number;
  readonly socketDiameter: number;
  /** A tube may be this much short and still sit well. */
  readonly endPlay: number;
  /** The way that is up when there is a choice. */
  readonly up: Axis;
  readonly ports: readonly Port[];
  readonly mass: number;
}

/** One kind of tube of a kit. */
export interface TubeKind {
  readonly name: string;
  readonly profile: Profile;
  /** Outside diameter, or from face to face. */
  readonly outside: number;
  readonly wall: number;
  readonly length: number;
  readonly density: number;
  readonly modulus: number;
  readonly bendingStrength: number;
  readonly bearingStrength: number;
  readonly usedStockFactor: number;
}

/** One kind of panel of a kit. */
export interface PanelKind {
  readonly name: string;
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
}

/** One kind of small part of a kit. Lengths in mm, `load` in N, `mass` in kg; `bore` is the inside of the tube that a plug is for, left out for that of the usual one. */
export type FittingKind = { readonly name: string; readonly mass: number } & (
  /** A plug in the end of a tube with a round plate under it. */
  | { readonly is: 'foot-plate'; readonly diameter: number; readonly thickness: number; readonly plug: number; readonly bore?: number | undefined }
  /** A plug in the end of a tube, a fork and a wheel; `height` from the floor to the tube's end, `trail` from the plug's axis to the wheel's. */
  | { readonly is: 'castor'; readonly wheel: number; readonly width: number; readonly height: number; readonly trail: number; readonly plug: number; readonly bore?: number | undefined; readonly brake: boolean; readonly load: number }
  /** A plug that closes the end of a tube; its cap is `diameter` wide. */
  | { readonly is: 'end-cap'; readonly diameter: number; readonly thickness: number; readonly plug: number; readonly bore?: number | undefined }
  /** A square plate on a wall, and a ring round a tube whose axis runs `reach` before the wall. */
  | { readonly is: 'wall-bracket'; readonly plate: number; readonly thickness: number; readonly reach: number; readonly width: number; readonly load: number }
  /** A clip round a tube and a leaf pinned to a panel's face, `reach` from the tube's axis; panel and leaf turn about the axis. */
  | { readonly is: 'hinge'; readonly width: number; readonly thickness: number; readonly leaf: number; readonly reach: number }
  /** A clip like a hinge's that turns stiffly, so that the lid stays where it is put: a force of `grip` at the leaf's end turns it. */
  | { readonly is: 'lid-stay'; readonly width: number; readonly thickness: number; readonly leaf: number; readonly reach: number; readonly grip: number }
);

/** What a kit has besides its corner joint, its tube and its panel. */
export interface Catalogue {
  readonly joints: readonly JointKind[];
  readonly tubes: readonly TubeKind[];
  readonly panels: readonly PanelKind[];
  readonly fittings: readonly FittingKind[];
}
