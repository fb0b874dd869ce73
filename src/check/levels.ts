import type { Model } from '../model/index.ts';

/** Heights of the middle lines of the decks' tubes, where the posts are held, mm. */
export const deckLevels = (model: Model): readonly number[] =>
  model.deckTops.map((top) => top - model.pattern.thickness - model.pattern.wrapRadius);

/** Index of the deck whose level is nearest to a height. */
export function nearestDeck(model: Model, height: number): number {
  const gaps = deckLevels(model).map((level) => Math.abs(level - height));
  return gaps.indexOf(Math.min(...gaps));
}
