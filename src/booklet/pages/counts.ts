import type { Model, PartKind } from '../../model/index.ts';
import { PART_KINDS } from '../../parts/facts.ts';

export interface PartCount {
  readonly kind: PartKind;
  readonly count: number;
}

/** How many parts of each kind the item has, in the order in which parts are listed, kinds without parts left out. */
export function partCounts({ parts }: Model): readonly PartCount[] {
  return PART_KINDS
    .map((kind) => ({ kind, count: parts.filter((part) => part.kind === kind).length }))
    .filter(({ count }) => count > 0);
}
