import type { Model } from '../../model/index.ts';
import { panelsWanted } from './needs.ts';
import type { Serves } from './types.ts';

/** So many parts are told for one off-cut. */
const TOLD = 3;
const NEAR = 0.05;

/**
 * What an off-cut of a tube is long enough for: of every known item and kind of tube the longest that fits, the
 * longest of all first.
 */
export function servesTube(known: readonly Model[], length: number): readonly Serves[] {
  const fits = known.flatMap(({ item, size, tubes }) => tubes.filter((tube) => tube.length <= length + NEAR)
    .map(({ kind, length: side }): Serves => ({ item, size, kind, sides: [side] })));
  return largestOfEach(fits);
}

/** What an off-cut of a panel is large enough for, either way round: blanks and flat panels of the known items. */
export function servesPanel(known: readonly Model[], sides: readonly [number, number]): readonly Serves[] {
  const [long, short] = [Math.max(...sides), Math.min(...sides)];
  const fits = known.flatMap((model) => panelsWanted(model).map(({ kind, sides: own }): Serves => ({ item: model.item, size: model.size, kind, sides: own })))
    .filter((part) => Math.max(...part.sides) <= long + NEAR && Math.min(...part.sides) <= short + NEAR);
  return largestOfEach(fits);
}

function largestOfEach(fits: readonly Serves[]): readonly Serves[] {
  const size = ({ sides }: Serves): number => sides.reduce((product, side) => product * side, 1);
  const sorted = [...fits].sort((a, b) => size(b) - size(a) || a.item.localeCompare(b.item) || a.size.localeCompare(b.size));
  return sorted.filter((each, index) => sorted.findIndex(({ item, kind }) => item === each.item && kind === each.kind) === index).slice(0, TOLD);
}
