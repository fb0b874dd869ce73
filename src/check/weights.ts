import type { Case } from './types.ts';

/** Weight of one empty deck, N: everything that belongs to a deck, shared over the decks. */
export function deckWeight({ model, limits }: Case): number {
  const mass = model.parts.reduce((sum, part) => sum + (part.group === null ? 0 : part.mass), 0);
  return (mass * limits.gravity.value) / Math.max(1, model.deckTops.length);
}

/** Weight of the empty item, N. */
export const emptyWeight = ({ model, limits }: Case): number =>
  model.parts.reduce((sum, part) => sum + part.mass, 0) * limits.gravity.value;

/** Weight of the item with every deck loaded, N. */
export const loadedWeight = (given: Case): number =>
  emptyWeight(given) + given.load * given.model.deckTops.length;
