/** When a browser was lost: before it stood, or while it worked, where a hanging one has cost a whole wait already. */
type LostAt = keyof typeof LONGER;

/**
 * How long a browser may take for one answer, ms. Whenever one has been lost the next may take longer, should it be the
 * machine that is slow; up to a bound, so that no chain of losses, one within the other, waits for ever.
 */
export interface Patience {
  /** For the browser that is tried now. */
  readonly wait: number;
  grow(lost: LostAt): void;
}

/** So many times the last wait. */
const LONGER = { start: 2, work: 4 } as const;
/** At most so many times the first wait: what three browsers lost at work come to. */
const LONGEST = 16;

export function newPatience(first: number): Patience {
  let times = 1;
  return {
    get wait() { return first * times; },
    grow: (lost) => { times = Math.min(times * LONGER[lost], LONGEST); },
  };
}
