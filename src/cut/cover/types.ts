/** A kind of stock piece. */
export interface CoverStock {
  /** What one piece of it costs, in a unit of the caller's. */
  readonly cost: number;
  /** How many there are; null is as many as wanted. */
  readonly count: number | null;
}

/** One way to cut one stock piece. */
export interface Way {
  /** Place in the list of stocks. */
  readonly stock: number;
  /** How many of each wanted piece come out of it. */
  readonly makes: readonly number[];
}

/** The best ways to cut a stock piece when each wanted piece is worth its price. */
export interface BestWays {
  /** No way makes more than this. */
  readonly worth: number;
  readonly ways: readonly Way[];
}

/** Wanted pieces to be cut from stock at the least cost. */
export interface CoverTask {
  /** How many of each piece are wanted. */
  readonly demand: readonly number[];
  readonly stocks: readonly CoverStock[];
  /** The best ways of a stock at these prices that make of no piece more than `most`. `worth` holds for every way. */
  readonly best: (stock: number, prices: readonly number[], most: readonly number[]) => BestWays;
  /** Every way there is, where they are few: then the search over whole numbers proves a bound of its own. */
  readonly all?: () => readonly Way[] | null;
  /** Further prices that may prove a higher bound, each with what a stock piece of each kind is worth by them at most. */
  readonly proofs?: () => Iterable<{ readonly prices: readonly number[]; readonly worths: readonly number[] }>;
}

/** How often each way is cut. */
export interface Taken {
  readonly way: Way;
  readonly times: number;
}

export interface Cover {
  readonly taken: readonly Taken[];
  /** Pieces that no stock is left for, by piece. */
  readonly missing: readonly number[];
  readonly cost: number;
  /** No way of cutting costs less: proven by prices for which no way of any stock is worth more than it costs. */
  readonly bound: number;
}
