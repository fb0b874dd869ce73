import type { Model } from './types.ts';

/** Items told by points have no decks and frames that belong together. */
export const isToldByPoints = ({ groups }: Pick<Model, 'groups'>): boolean => groups.length === 0;
