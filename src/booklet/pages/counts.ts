import type { Model, PartKind } from '../../model/index.ts';

/** The order in which parts are listed: the big ones first. */
const partOrder: readonly PartKind[] = ['panel', 'flat-panel', 'long-tube', 'short-tube', 'post', 'cable', 'joint', 'panel-pin', 'joint-pin', 'wing-nut'];

export interface PartCount {
  readonly kind: PartKind;
  readonly count: number;
}

/** How many parts of each kind the item has, in the order of `partOrder`, kinds without parts left out. */
export function partCounts({ parts }: Model): readonly PartCount[] {
  return partOrder
    .map((kind) => ({ kind, count: parts.filter((part) => part.kind === kind).length }))
    .filter(({ count }) => count > 0);
}
