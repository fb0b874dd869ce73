import type { Case } from './types.ts';

/** Weight of one empty deck, N: everything that belongs to a deck, shared over the decks. */
export function deckWeight({ model, limits }: Case): number {
  const decks = model.groups.filter(({ kind }) => kind === 'deck').map(({ name }) => name);
  const mass = model.parts.reduce((sum, part) => sum + (part.group !== null && decks.includes(part.group) ? part.mass : 0), 0);
  return (mass * limits.gravity.value) / Math.max(1, model.deckTops.length);
}

/** Weight of the empty item, N. */
export const emptyWeight = ({ model, limits }: Case): number =>
  model.parts.reduce((sum, part) => sum + part.mass, 0) * limits.gravity.value;

/** Weight of the item with every deck loaded, N. */
export const loadedWeight = (given: Case): number =>
  emptyWeight(given) + given.load * given.model.deckTops.length;
