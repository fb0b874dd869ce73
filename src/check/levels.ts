import { placed, type Model } from '../model/index.ts';
import { partsOf } from './parts.ts';

/** Heights of the middle lines of the decks' tubes, where the posts are held, mm. */
export const deckLevels = (model: Model): readonly number[] =>
  model.deckTops.map((top) => top - model.pattern.thickness - model.pattern.wrapRadius);

/** Heights of all decks' and frames' tubes from the lowest up, mm; equal ones once. */
export function tubeLevels(model: Model): readonly number[] {
  const heights = partsOf(model, 'long-tube', 'short-tube').map((tube) => placed(tube.pose, [0, 0, 0])[2]).toSorted((a, b) => a - b);
  return heights.filter((height, index) => index === 0 || height - (heights[index - 1] ?? 0) > 1);
}

/** Index of the level that is nearest to a height. */
export function nearestLevel(levels: readonly number[], height: number): number {
  const gaps = levels.map((level) => Math.abs(level - height));
  return gaps.indexOf(Math.min(...gaps));
}
