import type { Words } from '../words/index.ts';

/** Languages of one booklet: the first gives its direction, the others stand beside it. */
export type Tongues = readonly [Words, ...Words[]];

/** As in file names: `ar+fr`. */
export const nameOf = (tongues: Tongues): string => tongues.map(({ lang }) => lang).join('+');
