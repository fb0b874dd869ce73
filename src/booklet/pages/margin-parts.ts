import { findPicture, type PictureOf } from '../../draw/index.ts';
import type { Model, PartKind } from '../../model/index.ts';
import type { NewPart, Step, SupplyName } from '../../plan/index.ts';
import { PARTS } from '../../parts/facts.ts';
import { varietiesOf, varietyOf } from '../../parts/varieties.ts';
import type { Words } from '../words/index.ts';
import type { BookletInput } from './types.ts';
import { countsBySize, type SizedCount } from './part-sizes.ts';

/** A kind of part in a step's margin, or a thing taken beside the parts: its small picture, and under it how many there are of each length. */
export interface MarginPart {
  readonly kind: PartKind | SupplyName | 'block';
  /** What its picture is, in words, with their number. */
  readonly said: (words: Words) => string;
  /** Its small picture. */
  readonly picture: PictureOf;
  readonly counts: readonly SizedCount[];
}

/** The new parts of a step, or those that it has to hand, what it takes beside, and the blocks that it puts under: their picture says how many and how high. */
export const marginParts = ({ model, pictures }: Pick<BookletInput, 'model' | 'pictures'>, { number, newParts, toHand, supplies }: Step): readonly MarginPart[] => [
  ...toHand.flatMap((each) => eachAlike(model, each)),
  ...newParts.flatMap((each) => (PARTS[each.kind].hasWayUp === true ? [marginPart(model, each, { what: 'step-part', step: number, kind: each.kind })] : eachAlike(model, each))),
  ...supplies.map(({ name, count, size }): MarginPart =>
    ({ kind: name, said: (words) => suppliesSaid(words, name, count), picture: { what: 'small-supply', name }, counts: [{ count, size, isRound: true }] })),
  ...[findPicture(pictures, { what: 'step-blocks', step: number }) ?? []].flat().map(({ of }): MarginPart =>
    ({ kind: 'block', said: (words) => words.t('booklet.tools.block'), picture: of, counts: [] })),
];

function marginPart(model: Model, { kind, ids }: NewPart, picture: PictureOf): MarginPart {
  const counts = known(countsBySize(model, ids), ids);
  const count = counts.reduce((sum, each) => sum + each.count, 0);
  return { kind, said: (words) => words.t(`parts.${kind}.counted`, { count }), picture, counts };
}

/** Parts of a kind, those of each variety apart: a wide foot and a small cap have each their picture. */
function eachAlike(model: Model, { kind, ids }: NewPart): readonly MarginPart[] {
  const apart = varietiesOf(model, kind).map(({ parts }): NewPart => ({ kind, ids: parts.flatMap(({ id }) => (ids.includes(id) ? [id] : [])) })).filter((each) => each.ids.length > 0);
  return (apart.length === 0 ? [{ kind, ids }] : apart).map((each) => marginPart(model, each, smallPicture(model, each)));
}

/** The name of what is taken beside the parts, and how many. */
export const suppliesSaid = (words: Words, name: SupplyName, count: number): string => `${words.t(`parts.${name}.name`)} ${words.times(count)}`;

/** The small picture of parts of a kind; of flat panels each kind has its own. */
function smallPicture(model: Model, { kind, ids }: NewPart): PictureOf {
  const place = kind === 'flat-panel' ? model.plates.findIndex(({ partIds }) => partIds.some((id) => ids.includes(id))) : varietyOf(model, kind, ids);
  return { what: 'small-part', kind, plate: Math.max(0, place) };
}

/** Parts that the model does not know have no size, but are counted. */
function known(counts: readonly SizedCount[], ids: readonly string[]): readonly SizedCount[] {
  return counts.length > 0 ? counts : [{ count: ids.length, size: [] }];
}
