import type { Words } from '../words/index.ts';

/** First and last number of each unbroken row of steps, in order. */
export function stepRows(numbers: readonly number[]): readonly (readonly [first: number, last: number])[] {
  const firsts = numbers.filter((number) => !numbers.includes(number - 1));
  const lasts = numbers.filter((number) => !numbers.includes(number + 1));
  return firsts.map((first, index) => [first, lasts[index] ?? first]);
}

/** A row as it is printed: `3–5`, or one number. */
export const rowText = (words: Words, row: readonly number[]): string => [...new Set(row)].map((number) => words.number(number)).join('–');
