import type { Vec3 } from '../../model/index.ts';

/** A way a node can move: along x, y, z (mm) and round x, y, z (rad). */
export type Freedom = 'ux' | 'uy' | 'uz' | 'rx' | 'ry' | 'rz';

export const freedoms: readonly Freedom[] = ['ux', 'uy', 'uz', 'rx', 'ry', 'rz'];

/** A turn of a member's end, round the member's own axes: x along it, z towards `up`. */
export type EndTurn = 'rx' | 'ry' | 'rz';

/** Six numbers in the order of `freedoms`: mm and rad, or N and N·mm. */
export type Six = readonly [number, number, number, number, number, number];

export interface FrameNode {
  readonly name: string;
  /** mm */
  readonly at: Vec3;
}

/** Stiffnesses of a cross-section: E A in N; E I and G J in N·mm². Nought where a member has none. */
export interface Section {
  readonly EA: number;
  /** Bending round the member's own y: it sags along its own z. */
  readonly EIy: number;
  readonly EIz: number;
  readonly GJ: number;
}

export interface Member {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly section: Section;
  /** Where the member's own z axis points, not along the member. Upwards (z) unless told; x for an upright member. */
  readonly up?: Vec3;
  /** Turns that an end does not pass on to its node; a pin frees all three. */
  readonly released?: { readonly from?: readonly EndTurn[]; readonly to?: readonly EndTurn[] };
}

/** Pulls but never pushes; hangs slack otherwise. Not stretched beforehand. */
export interface Cable {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** E A, N */
  readonly EA: number;
}

export interface Support {
  readonly node: string;
  readonly held: readonly Freedom[];
}

/** N and N·mm, in the axes of the whole frame. */
export interface NodeLoad {
  readonly node: string;
  readonly force?: Vec3;
  readonly moment?: Vec3;
}

/** Even load on the whole of a member, N per mm of its length, in the axes of the whole frame. */
export interface LineLoad {
  readonly member: string;
  readonly perLength: Vec3;
}

/** A frame of straight bars and cables. Units N, mm, rad. Names are unique among their kind. */
export interface Frame {
  readonly nodes: readonly FrameNode[];
  readonly members: readonly Member[];
  readonly cables: readonly Cable[];
  readonly supports: readonly Support[];
  readonly nodeLoads: readonly NodeLoad[];
  readonly lineLoads: readonly LineLoad[];
}

/** Forces of the nodes on a member's ends, N and N·mm, in the member's own axes. */
export interface EndForces {
  readonly from: Six;
  readonly to: Six;
}

export interface FrameResult {
  /** Of every node, in the axes of the whole frame. */
  readonly displacements: Readonly<Record<string, Six>>;
  readonly memberForces: Readonly<Record<string, EndForces>>;
  /** Pull in each cable, N; 0 when slack. */
  readonly cableForces: Readonly<Record<string, number>>;
  /** Of every support on the frame; 0 in the freedoms it does not hold. */
  readonly reactions: Readonly<Record<string, Six>>;
}
