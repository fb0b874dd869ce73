import type { Model, Part, PartKind } from '../model/types.ts';
import { PARTS } from './facts.ts';

/** Parts of one kind that are made alike but for their length. */
export interface Variety {
  readonly kind: PartKind;
  /** Its place among those of its kind, in the order in which the model has them. */
  readonly variety: number;
  readonly parts: readonly [Part, ...Part[]];
}

type Given = Pick<Model, 'parts' | 'patterns'>;

/** The varieties of a kind of part: joints and fittings by what they are, tubes by their outline, folded panels by their pattern. Flat panels are one. */
export function varietiesOf(model: Given, kind: PartKind): readonly Variety[] {
  const groups = new Map<string | number, [Part, ...Part[]]>();
  for (const part of model.parts.filter((each) => each.kind === kind)) {
    const of = madeAs(model, part);
    const group = groups.get(of);
    if (group === undefined) groups.set(of, [part]);
    else group.push(part);
  }
  return [...groups.values()].map((parts, variety) => ({ kind, variety, parts }));
}

/** The variety of a part; nought where the model does not know it. */
export const varietyOf = (model: Given, kind: PartKind, ids: readonly string[]): number =>
  varietiesOf(model, kind).find(({ parts }) => parts.some(({ id }) => ids.includes(id)))?.variety ?? 0;

/** What tells a part from others of its kind. */
function madeAs({ patterns }: Given, { id, kind, shape }: Part): string | number {
  return kind === 'panel' ? patterns.findIndex(({ partIds }) => partIds.includes(id)) : PARTS[kind].variety(shape);
}
