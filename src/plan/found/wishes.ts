import { FaultError, type OrderWish } from '../../read/index.ts';
import { explained, pathOf } from './reason-path.ts';
import type { OrderReason } from '../types.ts';
import { hasBit, indicesOf, type Bits } from './bits.ts';
import type { Ground } from './ground.ts';
import type { BatchLine } from './line.ts';
import type { Link } from './links.ts';
import type { Told } from './reasons.ts';
import type { Wanted } from './search.ts';

/** Refuses a wish that names no step, that asks for a turn at another time, or that goes against what must hold or an earlier wish, with the parts in the way. */
export function checkWishes(wishes: readonly OrderWish[], told: readonly Told[], must: readonly OrderReason[]): void {
  const keys = told.map(({ step }) => step.key);
  wishes.forEach((wish, index) => {
    for (const field of ['first', 'then'] as const) {
      if (!keys.includes(wish[field])) throw fault(wish, `order.${field}`, `"${wish[field]}"`, `the key of a step, one of ${keys.join(', ')}`);
    }
    const earlier = wishes.slice(0, index).map((each): OrderReason => ({ first: each.first, then: each.then, rule: 'designer', parts: [] }));
    const against = pathOf([...must, ...earlier], wish.then, wish.first);
    if (against !== null) throw refusal(wish, against.map(explained).join('; '));
    const turn = told.find(({ step, building }) => building?.is === 'turn' && (step.key === wish.first || step.key === wish.then));
    if (turn !== undefined && !isKept(wish, keys)) throw refusal(wish, `"${turn.step.key}" turns the work, and comes where the work has to lie another way`);
  });
}

/** Refuses the first wish that an order does not keep. */
export function refuseUnkept(wishes: readonly OrderWish[], keys: readonly string[]): void {
  const unkept = wishes.filter((wish) => !isKept(wish, keys));
  if (unkept.length > 0) throw refusalOf(unkept);
}

/** The refusal of the first of some wishes: the item comes apart in no way that keeps to them. */
export const refusalOf = (unkept: readonly OrderWish[]): Error => {
  const [first] = unkept;
  return first === undefined ? new RangeError('no order keeps to these wishes') : refusal(first, 'the item comes apart in no way that keeps to it');
};

const refusal = (wish: OrderWish, why: string): FaultError => fault(wish, 'order', `"${wish.first}" before "${wish.then}"`, `leave this out: ${why}`);

const fault = (wish: OrderWish, field: string, found: string, remedy: string): FaultError =>
  new FaultError([{ position: wish.position, field, found, remedy }]);

export const isKept = ({ first, then }: OrderWish, keys: readonly string[]): boolean => keys.includes(first) && keys.indexOf(first) < keys.indexOf(then);

/** What the wishes among steps that put something together ask of the search; the same for every copy of a batch. */
export function wantedBy(ground: Ground, wishes: readonly OrderWish[], told: readonly Told[], batches: readonly (BatchLine & { readonly name: string })[]): readonly Wanted[] {
  const linksAt = (key: string): ReadonlySet<Link> | null => {
    const found = told.find(({ step }) => step.key === key);
    if (found?.building?.is !== 'cut') return null;
    const batch = batches.find(({ name }) => name === found.step.batch);
    return new Set(found.building.cut.undoes.flatMap((link) => (batch === undefined ? [link] : copiesOf(ground, link, batch))));
  };
  return wishes.flatMap((wish) => {
    const [first, then] = [linksAt(wish.first), linksAt(wish.then)];
    return first === null || then === null ? [] : [{ first, then }];
  });
}

/** The link that takes a link's place in each copy: between the units that come in the same places. */
function copiesOf(ground: Ground, link: Link, { copies }: BatchLine): readonly Link[] {
  const [own] = copies;
  if (own === undefined) return [link];
  return copies.flatMap((copy) => {
    const [a, b] = [placeIn(ground, own, copy, link.a), placeIn(ground, own, copy, link.b)];
    return ground.links.filter((other) => other.is === link.is && other.a === a && other.b === b);
  });
}

/** The unit of a copy that comes in the same place as one of the first; flaps that lie flat count with those that are folded. */
function placeIn(ground: Ground, own: Bits, copy: Bits, index: number): number | null {
  if (!hasBit(own, index)) return null;
  const [ours, theirs] = [indicesOf(own), indicesOf(copy)];
  const there = theirs[ours.indexOf(index)];
  return there === undefined || ground.units.all[there]?.look !== ground.units.all[index]?.look ? null : there;
}
