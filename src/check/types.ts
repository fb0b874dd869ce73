export type Verdict = 'pass' | 'caution' | 'fail';

/** One checked fact. Figures in the unit given (mm, N, N/mm², rad, kg, 1). */
export interface Finding {
  /** Key under `findings` in the locale files, for example `tube-bending`. */
  readonly name: string;
  readonly verdict: Verdict;
  readonly figure: number;
  readonly limit: number;
  readonly unit: string;
  /** limit / figure for upper limits, figure / limit for lower ones: at least 1 passes. */
  readonly margin: number;
  /** Formula or publication of the limit, with its tag: R read, R2 read second hand, C computed, M from memory. */
  readonly source: string;
  /** Parts that cause it. */
  readonly parts: readonly string[];
}

/** What the checks support saying in the booklet. */
export interface Advice {
  /** N spread over one deck, or null when no load is supported. */
  readonly safeLoadPerDeck: number | null;
  readonly fixToWall: boolean;
  /** N, pushed at the top, that tips the empty item towards the front. */
  readonly tippingForce: number;
}

export interface Report {
  readonly findings: readonly Finding[];
  readonly advice: Advice;
}
