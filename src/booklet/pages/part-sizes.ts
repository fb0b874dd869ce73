import { lettersWritten } from '../../draw/index.ts';
import type { Model } from '../../model/index.ts';
import { PARTS } from '../../parts/facts.ts';
import { isolate, type Words } from '../words/index.ts';

/** How many parts there are of one size: the length of a tube, the two sides of a flat panel, diameter and length of a pin or a cable, mm; none for parts that come in one size. */
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

/** A figure from here on has three digits: two figures then stand on two lines of a step's margin, mm. */
const THREE_DIGITS = 100;

/** How many lines of a step's margin a size takes. */
export const sizeLineCount = ({ size }: Pick<SizedCount, 'size'>): number => (size.length > 1 && size.some((each) => each >= THREE_DIGITS) ? size.length : Math.min(1, size.length));

/** The same text on as many lines as a step's margin needs: `783 mm`, or `892 ×` over `230 mm`. */
export function sizeLines(words: Words, counted: Pick<SizedCount, 'size' | 'isRound'>): readonly string[] {
  const whole = sizeText(words, counted);
  if (whole === null || sizeLineCount(counted) === 1) return whole === null ? [] : [whole];
  return counted.size.map((each, index) => {
    const sign = counted.isRound === true && index === 0 ? 'Ø' : '';
    return index === counted.size.length - 1 ? words.measures([each], 'mm', sign) : isolate(`${sign}${words.number(each)}\u00a0×`);
  });
}
