import type { Model, Part, PartKind, Vec3 } from '../model/index.ts';

export const partsOf = (model: Model, ...kinds: readonly PartKind[]): readonly Part[] =>
  model.parts.filter((part) => kinds.includes(part.kind));

export const idsOf = (model: Model, ...kinds: readonly PartKind[]): readonly string[] =>
  partsOf(model, ...kinds).map((part) => part.id);

export const distance = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** A bed: a small child sleeps on its deck. */
export const isBed = ({ use }: Pick<Model, 'use'>): boolean => use === 'bed';
