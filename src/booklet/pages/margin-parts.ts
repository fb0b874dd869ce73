import type { PictureOf } from '../../draw/index.ts';
import type { Model, PartKind } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { PARTS } from '../../parts/facts.ts';
import { varietyOf } from '../../parts/varieties.ts';
import { countsBySize, type SizedCount } from './part-sizes.ts';

/** A kind of part in a step's margin: its small picture, and under it how many there are of each length. */
export interface MarginPart {
  readonly kind: PartKind;
  /** Its small picture. */
  readonly picture: PictureOf;
  readonly counts: readonly SizedCount[];
}

/** The new parts of a step, or those that it has to hand. A flat panel is told by its width alone: the margin holds no more. */
export function marginParts(model: Model, { number, newParts, toHand }: Step): readonly MarginPart[] {
  return [...toHand, ...newParts].map(({ kind, ids }, index) => ({
    kind,
    picture: PARTS[kind].hasWayUp === true && index >= toHand.length ? { what: 'step-part', step: number, kind } : smallPicture(model, kind, ids),
    counts: known(countsBySize(model, ids), ids).map((each) => ({ ...each, size: each.size.slice(0, 1) })),
  }));
}

/** The small picture of parts of a kind; of flat panels each kind has its own. */
function smallPicture(model: Model, kind: PartKind, ids: readonly string[]): PictureOf {
  const place = kind === 'flat-panel' ? model.plates.findIndex(({ partIds }) => partIds.some((id) => ids.includes(id))) : varietyOf(model, kind, ids);
  return { what: 'small-part', kind, plate: Math.max(0, place) };
}

/** Parts that the model does not know have no size, but are counted. */
function known(counts: readonly SizedCount[], ids: readonly string[]): readonly SizedCount[] {
  return counts.length > 0 ? counts : [{ count: ids.length, size: [] }];
}
