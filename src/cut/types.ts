import type { TubeNeed } from '../model/index.ts';

/** A piece to saw; pieces of one length have one letter, whatever they become: it is written on them. mm. */
export interface LetteredPiece {
  readonly kind: TubeNeed['kind'];
  readonly length: number;
  readonly letter: string;
}

/** What is sawn from one stock tube, longest piece first. */
export interface TubeCutPattern {
  /** Stock tubes cut this way. */
  readonly count: number;
  readonly pieces: readonly LetteredPiece[];
  /** What is left of each such tube, mm. */
  readonly offCut: number;
}

/** How the tubes of one item are sawn from whole stock tubes. Lengths in mm. */
export interface TubeCutPlan {
  readonly stock: number;
  readonly kerf: number;
  readonly patterns: readonly TubeCutPattern[];
  readonly tubesUsed: number;
  /** No plan can use fewer stock tubes than this. */
  readonly fewest: number;
  /** How much shorter than its name a piece may come out, because the saw's cut is shared: within the joint's end play. */
  readonly shortest: number;
}
