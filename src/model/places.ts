import { USE_OF_DECKS, USE_OF_PANELS, type Item, type Place } from '../read/index.ts';
import type { Group, Part } from './types.ts';

/** The places of a short form, each with its parts: told by the file for decks and panels by name, or following from the item's use. */
export function placesOfShortForm(item: Item, size: string, groups: readonly Group[], parts: readonly Part[], plates: ReadonlyMap<string, readonly string[]>): readonly Place[] {
  const partsOf = (piece: string): readonly string[] => plates.get(piece) ?? parts.filter(({ kind, group }) => kind === 'panel' && groups.some(({ name, piece: of }) => name === group && of === piece)).map(({ id }) => id);
  const told = item.structures[size]?.places ?? [];
  if (told.length > 0) return told.map((place) => ({ ...place, panels: place.panels.flatMap(partsOf) }));
  return item.pieces.flatMap((piece): readonly Place[] => {
    if (piece.is !== 'deck' && piece.is !== 'panel') return [];
    const use = piece.is === 'deck' ? USE_OF_DECKS[item.use] : USE_OF_PANELS[item.use];
    return [{ name: piece.name, use, panels: partsOf(piece.name), load: null, mattress: null }];
  });
}
