/** Pieces of one length to be sawn; lengths in mm. */
export interface LengthPiece {
  readonly length: number;
  readonly count: number;
}

/** Stock pieces of one length that may be used, mm. */
export interface LengthStock {
  readonly length: number;
  /** How many there are; null is as many as wanted. */
  readonly count: number | null;
  /** What using one costs, for example 1, or its length. */
  readonly cost: number;
}

/** What a saw cut takes, and how much shorter than its name a piece may come out, mm. */
export interface SawRules {
  readonly kerf: number;
  readonly play: number;
}

/** Pieces sawn from each of some stock pieces alike. */
export interface LengthWay {
  /** Place in the list of stocks. */
  readonly stock: number;
  /** Stock pieces sawn this way. */
  readonly times: number;
  /** How many of each piece come out of one. */
  readonly makes: readonly number[];
}

export interface LengthPlan {
  readonly ways: readonly LengthWay[];
  /** Pieces for which there is no stock, by piece. */
  readonly missing: readonly number[];
  readonly cost: number;
  /** No plan costs less. */
  readonly bound: number;
  /** Whether cost and bound are the same. */
  readonly proven: boolean;
}
