/** Papers that every printer takes, and those of which two pages go on one of them. */
export const FULL_PAPERS = ['a4', 'letter'] as const;
export const HALF_PAPERS = ['a5', 'half-letter'] as const;

/** Papers on which each edition comes. */
export const EDITION_PAPERS = {
  pictures: [...FULL_PAPERS, ...HALF_PAPERS],
  words: [...FULL_PAPERS, ...HALF_PAPERS],
  wall: [...FULL_PAPERS, 'a3'],
  overview: FULL_PAPERS,
} as const;

export type AnyEdition = keyof typeof EDITION_PAPERS;

/** All editions, in the order in which they are offered. */
export const EDITIONS = Object.keys(EDITION_PAPERS) as readonly AnyEdition[];

export const comesOn = (edition: AnyEdition, paper: string): boolean => EDITION_PAPERS[edition].some((each) => each === paper);
