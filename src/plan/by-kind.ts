import type { Model, Part } from '../model/index.ts';
import type { NewPart } from './types.ts';

/** The parts that are picked, those of one kind together, in the order of the model. */
export function byKind({ parts }: Pick<Model, 'parts'>, isPicked: (part: Part) => boolean): readonly NewPart[] {
  const picked = parts.filter(isPicked);
  return [...new Set(picked.map(({ kind }) => kind))].map((kind) => ({ kind, ids: picked.filter((part) => part.kind === kind).map(({ id }) => id) }));
}
