/** A rectangle on a stock panel, from its lower left corner, mm. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Axis = 'x' | 'y';

/** Rectangular pieces to be cut from panels, mm. */
export interface SheetPiece {
  readonly width: number;
  readonly height: number;
  readonly count: number;
  /** Whether it may lie turned by a quarter. */
  readonly turn: boolean;
}

/** Panels of one size and damage that may be used, mm. */
export interface SheetStock {
  readonly width: number;
  readonly height: number;
  /** How many there are; null is as many as wanted. */
  readonly count: number | null;
  /** What using one costs, for example 1, or its area. */
  readonly cost: number;
  /** Where no piece may lie: holes, ribs, broken corners. */
  readonly defects: readonly Rectangle[];
  /** The direction of its grain or flutes: long sides of pieces lie along it. Null where any way will do. */
  readonly grain: Axis | null;
}

/** A piece that lies on a panel. */
export interface Lying extends Rectangle {
  /** Place in the list of pieces. */
  readonly piece: number;
  readonly turned: boolean;
}

/**
 * A panel or part of it: a piece, an off-cut, loose pieces, or two parts that one straight cut from edge to edge makes. The cut
 * takes the kerf beyond `at`, which counts from the panel's left or lower edge.
 */
export type CutPart =
  | { readonly part: 'piece'; readonly lies: Lying }
  | { readonly part: 'off-cut'; readonly region: Rectangle }
  /** Pieces that no straight cut from edge to edge parts: cut out one by one, the knife stops at corners. */
  | { readonly part: 'loose'; readonly lies: readonly Lying[]; readonly region: Rectangle }
  | { readonly part: 'cut'; readonly axis: Axis; readonly at: number; readonly region: Rectangle; readonly first: CutPart; readonly second: CutPart };

/** Only straight cuts from edge to edge, as a knife along a straight-edge makes them, or any that part the pieces. */
export type Edges = 'straight' | 'any';

/** How some panels alike are cut. */
export interface SheetWay {
  /** Place in the list of stocks. */
  readonly stock: number;
  /** Panels cut this way. */
  readonly times: number;
  readonly cuts: CutPart;
}

export interface SheetPlan {
  readonly ways: readonly SheetWay[];
  /** Pieces for which there is no panel, by piece. */
  readonly missing: readonly number[];
  readonly cost: number;
  /** No plan with such edges costs less. */
  readonly bound: number;
  readonly proven: boolean;
}
