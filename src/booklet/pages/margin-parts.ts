import type { PictureOf } from '../../draw/index.ts';
import type { Model, PartKind } from '../../model/index.ts';
import type { Step, SupplyName } from '../../plan/index.ts';
import { PARTS } from '../../parts/facts.ts';
import { varietyOf } from '../../parts/varieties.ts';
import type { Words } from '../words/index.ts';
import { countsBySize, type SizedCount } from './part-sizes.ts';

/** A kind of part in a step's margin, or a thing taken beside the parts: its small picture, and under it how many there are of each length. */
export interface MarginPart {
  readonly kind: PartKind | SupplyName;
  /** What its picture is, in words, with their number. */
  readonly said: (words: Words) => string;
  /** Its small picture. */
  readonly picture: PictureOf;
  readonly counts: readonly SizedCount[];
}

/** The new parts of a step, or those that it has to hand, and what it takes beside. */
export const marginParts = (model: Model, { number, newParts, toHand, supplies }: Step): readonly MarginPart[] => [
  ...[...toHand, ...newParts].map(({ kind, ids }, index): MarginPart => {
    const counts = known(countsBySize(model, ids), ids);
    const count = counts.reduce((sum, each) => sum + each.count, 0);
    return { kind, said: (words) => words.t(`parts.${kind}.counted`, { count }), picture: liesAs(kind, index >= toHand.length) ? { what: 'step-part', step: number, kind } : smallPicture(model, kind, ids), counts };
  }),
  ...supplies.map(({ name, count, size }): MarginPart =>
    ({ kind: name, said: (words) => suppliesSaid(words, name, count), picture: { what: 'small-supply', name }, counts: [{ count, size, isRound: true }] })),
];

/** Whether a part that comes new is shown as it lies in the step. */
const liesAs = (kind: PartKind, comes: boolean): boolean => comes && PARTS[kind].hasWayUp === true;

/** The name of what is taken beside the parts, and how many. */
export const suppliesSaid = (words: Words, name: SupplyName, count: number): string => `${words.t(`parts.${name}.name`)} ${words.times(count)}`;

/** The small picture of parts of a kind; of flat panels each kind has its own. */
function smallPicture(model: Model, kind: PartKind, ids: readonly string[]): PictureOf {
  const place = kind === 'flat-panel' ? model.plates.findIndex(({ partIds }) => partIds.some((id) => ids.includes(id))) : varietyOf(model, kind, ids);
  return { what: 'small-part', kind, plate: Math.max(0, place) };
}

/** Parts that the model does not know have no size, but are counted. */
function known(counts: readonly SizedCount[], ids: readonly string[]): readonly SizedCount[] {
  return counts.length > 0 ? counts : [{ count: ids.length, size: [] }];
}
