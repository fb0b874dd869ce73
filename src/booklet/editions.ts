/** Papers on which each edition comes. */
export const EDITION_PAPERS = {
  pictures: ['a4', 'letter', 'a5', 'half-letter'],
  words: ['a4', 'letter', 'a5', 'half-letter'],
  wall: ['a4', 'letter', 'a3'],
  overview: ['a4', 'letter'],
} as const;

export type AnyEdition = keyof typeof EDITION_PAPERS;

/** All editions, in the order in which they are offered. */
export const EDITIONS = Object.keys(EDITION_PAPERS) as readonly AnyEdition[];

export const comesOn = (edition: AnyEdition, paper: string): boolean => EDITION_PAPERS[edition].some((each) => each === paper);
