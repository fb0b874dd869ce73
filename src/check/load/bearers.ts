import type { Model, PartKind } from '../../model/index.ts';
import { partsOf } from '../parts.ts';

/** Ids of the decks' tubes of a kind; bare frames bear no deck. */
export function bearersOf(model: Model, kind: PartKind): readonly string[] {
  const decks = model.groups.filter((group) => group.kind === 'deck').map(({ name }) => name);
  return partsOf(model, kind).filter(({ group }) => group !== null && decks.includes(group)).map(({ id }) => id);
}
