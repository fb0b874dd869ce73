import { lettersWritten } from '../../draw/index.ts';
import type { Model } from '../../model/index.ts';
import { PARTS } from '../../parts/facts.ts';
import type { Words } from '../words/index.ts';

/** How many parts there are of one size: the length of a tube or a cable, the two sides of a flat panel, a pin's diameter and length, mm; none for parts that come in one size. */
export interface SizedCount {
  readonly count: number;
  readonly size: readonly number[];
  /** The first of the sizes is a diameter. */
  readonly isRound?: true;
  /** What is written on the tubes. */
  readonly letter?: string;
}

/** The parts of these ids counted by size, and tubes by what is written on them, in the order in which the model has them. */
export function countsBySize(model: Model, ids: readonly string[]): readonly SizedCount[] {
  const wanted = model.parts.filter((part) => ids.includes(part.id));
  // Letters of the whole item are found for tubes alone: this is asked for at every step in every language.
  const written: ReadonlyMap<string, string> = wanted.some(({ shape }) => shape.form === 'tube') ? lettersWritten(model) : new Map();
  const counted = wanted.map(({ id, kind, shape }): Omit<SizedCount, 'count'> => {
    const letter = written.get(id);
    return { size: PARTS[kind].size(shape), ...(PARTS[kind].isRound === true ? { isRound: true } : {}), ...(letter === undefined ? {} : { letter }) };
  });
  const named = counted.map(countKey);
  return counted.flatMap((each, index) => (named.indexOf(countKey(each)) === index ? [{ ...each, count: named.filter((name) => name === countKey(each)).length }] : []));
}

/** Tells one count from the others beside it. */
export const countKey = ({ size, letter = '' }: Omit<SizedCount, 'count'>): string => [...size, letter].join();

/** `783 mm`, `892 × 230 mm` or `Ø6 × 58 mm`, isolated; null where there is no size to tell. */
export function sizeText(words: Words, { size: [first, ...more], isRound }: Pick<SizedCount, 'size' | 'isRound'>): string | null {
  if (first === undefined) return null;
  if (isRound === true) return words.measures([first, ...more], 'mm', 'Ø');
  return more.length === 0 ? words.measure(first, 'mm', 1) : words.measures([first, ...more], 'mm');
}
