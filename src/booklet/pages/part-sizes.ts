import { tubeLetter } from '../../cut/index.ts';
import type { Model } from '../../model/index.ts';
import { PARTS } from '../../parts/facts.ts';
import type { Words } from '../words/index.ts';

/** How many parts there are of one size: the length of a tube or a cable, the two sides of a flat panel, mm; none for parts that come in one size. */
export interface SizedCount {
  readonly count: number;
  readonly size: readonly number[];
  /** What is written on a tube of this length. */
  readonly letter?: string;
}

/** The parts of these ids counted by size, in the order in which the model has them. */
export function countsBySize(model: Model, ids: readonly string[]): readonly SizedCount[] {
  const counted = model.parts.filter((part) => ids.includes(part.id));
  const sizes = counted.map(({ kind, shape }) => PARTS[kind].size(shape));
  const letterOf = (place: number): string | null => {
    const shape = counted[place]?.shape;
    return shape?.form === 'tube' ? tubeLetter(model, shape.length) : null;
  };
  const same = (one: readonly number[], other: readonly number[]): boolean => one.join() === other.join();
  return sizes.flatMap((size, index) => {
    if (sizes.findIndex((other) => same(size, other)) !== index) return [];
    const letter = letterOf(index);
    return [{ size, count: sizes.filter((other) => same(size, other)).length, ...(letter === null ? {} : { letter }) }];
  });
}

/** `783 mm` or `892 × 230 mm`, isolated; null where there is no size to tell. */
export function sizeText(words: Words, [length, ...more]: readonly number[]): string | null {
  if (length === undefined) return null;
  return more.length === 0 ? words.measure(length, 'mm', 1) : words.measures([length, ...more], 'mm');
}
