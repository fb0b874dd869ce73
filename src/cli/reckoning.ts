/** How much is done of how much, in units, since when, ms. */
export interface Reckoning {
  readonly done: number;
  readonly total: number;
  readonly since: number;
}

export interface ReckonedPart {
  readonly expect: (units: number) => void;
  readonly done: (units: number) => void;
  /** What was expected of it and did not come is no longer waited for. */
  readonly end: () => void;
}

/** Adds up parts of the work. */
export function newReckoning(since: number): { readonly part: (units: number) => ReckonedPart; readonly all: () => Reckoning } {
  const parts: { expected: number; done: number }[] = [];
  return {
    part: (units) => {
      const own = { expected: units, done: 0 };
      parts.push(own);
      return {
        expect: (all) => { own.expected = Math.max(all, own.done); },
        done: (some) => { own.done += some; own.expected = Math.max(own.expected, own.done); },
        end: () => { own.expected = own.done; },
      };
    },
    all: () => ({
      done: parts.reduce((sum, { done }) => sum + done, 0),
      total: parts.reduce((sum, { expected }) => sum + expected, 0),
      since,
    }),
  };
}

/** Before this much is done nothing is estimated: units, and ms. */
const LEAST_DONE = 5;
const LEAST_TIME = 2000;

/** What is left at the pace so far, in ms; null as long as nothing can be said. */
export function leftOf({ done, total, since }: Reckoning, now: number): number | null {
  const passed = now - since;
  return done < LEAST_DONE || passed < LEAST_TIME ? null : (passed * (total - done)) / done;
}

/** The news as one line, with the estimate. */
export function spoken(what: string, all: Reckoning, now: number): string {
  const left = leftOf(all, now);
  return left === null ? what : `${what}; about ${duration(left)} left`;
}

/** Coarse, as the estimate is: seconds by tens below two minutes, then minutes. */
function duration(ms: number): string {
  const seconds = ms / 1000;
  if (seconds < 10) return `${Math.max(1, Math.round(seconds))} s`;
  return seconds < 115 ? `${Math.ceil(seconds / 10) * 10} s` : `${Math.round(seconds / 60)} min`;
}
