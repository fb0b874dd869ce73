import type { Manifold, ManifoldToplevel } from 'manifold-3d';

/** Outside and inside measure of a tube, mm: diameters, or from face to face. */
export interface TubeSize {
  readonly outside: number;
  readonly inside: number;
}

/** What a tube of one size carries, about the axis it is weakest about. */
export interface TubeSection {
  /** mm² */
  readonly area: number;
  /** mm⁴ */
  readonly secondMoment: number;
  /** mm³ */
  readonly sectionModulus: number;
  /** Modulus with a hole of so many mm right through both walls where it bends most, mm³. */
  readonly drilledModulus: (hole: number) => number;
  /** Width on which a pin of so many mm bears in one wall, mm. */
  readonly bearingWidth: (pin: number) => number;
}

/** What a flap is wrapped for. Lengths mm, angles rad. */
export interface WrapGivens {
  /** Inner face to tube axis. */
  readonly radius: number;
  readonly thickness: number;
  /** k of the panel: the layer at k·t from the inner face keeps its length. */
  readonly neutralLayer: number;
  /** How far the tab turns back. */
  readonly turnBack: number;
  readonly creases: number;
}

/** The way of a flap round a tube, measured on the flat panel outwards from the tube's axis line. */
export interface WrapPath {
  /** Where each crease lies and how far it turns, from the inside outwards. */
  readonly creases: readonly { readonly at: number; readonly turn: number }[];
  /** Where the half-cut lies. */
  readonly halfCut: number;
  /** How far inside the tube's axis line the opened half-cut has its hinge once the tab lies flat. */
  readonly hingeInside: number;
  /** From the tube's axis to the farthest point of the flap's outer face. */
  readonly bulge: number;
}

/** All that follows from the outline of a tube. */
export interface TubeProfile {
  /** A solid bar of the outline along z, `width` mm across, from `from` to `to`; a hole's bar lets a shaft of that width through. */
  readonly bar: (kernel: ManifoldToplevel, width: number, from: number, to: number, kind?: 'shaft' | 'hole') => Manifold;
  readonly section: (size: TubeSize) => TubeSection;
  /** The fewest creases with which a flap goes round it, each no sharper than the panel allows. */
  readonly creases: (turnBack: number, tightest: number) => number;
  readonly wrapPath: (givens: WrapGivens) => WrapPath;
  /** Widest gap between tube and panel, mm, where the panel runs `clearance` from the tube. */
  readonly widestGap: (givens: WrapGivens, clearance: number) => number;
}
