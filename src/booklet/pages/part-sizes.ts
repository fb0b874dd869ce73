import type { Model } from '../../model/index.ts';
import { PARTS } from '../../parts/facts.ts';
import type { Words } from '../words/index.ts';

/** How many parts there are of one size: the length of a tube or a cable, the two sides of a flat panel, mm; none for parts that come in one size. */
export interface SizedCount {
  readonly count: number;
  readonly size: readonly number[];
}

/** The parts of these ids counted by size, in the order in which the model has them. */
export function countsBySize({ parts }: Model, ids: readonly string[]): readonly SizedCount[] {
  const sizes = parts.filter((part) => ids.includes(part.id)).map(({ kind, shape }) => PARTS[kind].size(shape));
  const same = (one: readonly number[], other: readonly number[]): boolean => one.join() === other.join();
  return sizes
    .filter((size, index) => sizes.findIndex((other) => same(size, other)) === index)
    .map((size) => ({ size, count: sizes.filter((other) => same(size, other)).length }));
}

/** `783 mm` or `892 × 230 mm`, isolated; null where there is no size to tell. */
export function sizeText(words: Words, [length, ...more]: readonly number[]): string | null {
  if (length === undefined) return null;
  return more.length === 0 ? words.measure(length, 'mm', 1) : words.measures([length, ...more], 'mm');
}
