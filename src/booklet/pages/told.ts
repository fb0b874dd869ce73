import { sheets } from './sheet.ts';
import { saidHeight, type Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** White between two things told side by side, round all of them, between picture and words, and least height of the words, mm. */
export const toldColumnGap = { wide: 10, narrow: 6 } as const;
export const safePad = 6;
export const toldGap = 5;
export const leastWords = 18;
/** The words, pt, and their lines, mm. */
export const toldSize = 12;
export const toldLine = 6;

/** Width of one of two things told side by side, mm. */
export function toldWidth({ paper }: BookletInput): number {
  const { main, narrow } = sheets[paper];
  return (main - (narrow ? toldColumnGap.narrow : toldColumnGap.wide)) / 2;
}

/** Height of a picture with words under it, mm; without words in the edition that has none. */
export function toldHeight(input: BookletInput, say: Say, picture: number, width: number): number {
  if (input.edition === 'pictures') return picture;
  return picture + toldGap + Math.max(leastWords, saidHeight(input, say, width, { size: toldSize, leading: toldLine }));
}
