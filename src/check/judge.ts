import type { FindingName } from './names.ts';
import type { Finding } from './types.ts';

/** A margin beyond this says nothing more; it keeps an empty figure from becoming infinite. */
const MOST_MARGIN = 1000;
/** Values that are equal but for the last digits of the sum count as equal. */
const NOISE = 1e-9;

interface Measured {
  readonly name: FindingName;
  readonly figure: number;
  readonly limit: number;
  readonly bound: 'most' | 'least';
  readonly unit: string;
  readonly source: string;
  readonly parts: readonly string[];
  /** What it is when the margin is under 1; `fail` unless said. */
  readonly otherwise?: 'caution' | 'fail';
}

/** Makes the finding: margin and verdict from figure and limit, numbers rounded as they leave the room. */
export function judge({ otherwise = 'fail', ...measured }: Measured): Finding {
  const margin = marginOf(measured);
  return {
    ...measured,
    figure: rounded(measured.figure),
    limit: rounded(measured.limit),
    margin,
    verdict: margin >= 1 ? 'pass' : otherwise,
  };
}

function marginOf({ figure, limit, bound }: Measured): number {
  if (bound === 'most' && figure <= 0) return MOST_MARGIN;
  // A bare lower bound of 0: there is nothing to divide by, only a side to be on.
  if (bound === 'least' && limit === 0) return figure >= -NOISE ? MOST_MARGIN : 0;
  const raw = bound === 'most' ? limit / figure : figure / limit;
  const settled = Math.abs(raw - 1) < NOISE ? 1 : raw;
  return Math.min(MOST_MARGIN, Math.floor(settled * 1e6) / 1e6);
}

/** Six digits are more than any input has. */
const rounded = (value: number): number => Number(value.toPrecision(6));
