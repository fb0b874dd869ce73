import type { Face, Mattress } from '../../read/index.ts';
import { placed } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { idsOf, partsOf } from '../parts.ts';
import type { Case, Check } from '../types.ts';
import { facingPlates, type Gap } from './plate-gaps.ts';

/** The mattress that the item file declares, mm; null but for beds. */
export const mattressOf = ({ declared }: Case): Mattress | null => declared.mattress;

/** What stands beside the mattress on a side of the base: how far its inner face is from the middle, and its part. */
interface Wall {
  readonly face: Face;
  readonly reach: number;
  readonly part: string;
}

/** The nearest part on each side that a mattress on the highest base meets: a flat panel, or a bare tube over the base. */
export function wallsOf(given: Case): readonly Wall[] {
  const { model } = given;
  const mattress = mattressOf(given);
  if (mattress === null) return [];
  const base = Math.max(...model.deckTops);
  const half = model.kit.tube.outsideDiameter / 2;
  const meets = (low: number, high: number): boolean => low < base + mattress.thickness && high > base;
  const plates = facingPlates(model).filter(({ bottom, top }) => meets(bottom, top)).map(({ axis, inner, plate }) => wall(axis === 0 ? 1 : 0, inner, Math.abs(inner), plate.id));
  const tubes = partsOf(model, 'long-tube', 'short-tube').flatMap((part) => {
    const at = placed(part.pose, [0, 0, 0]);
    const axis = part.kind === 'long-tube' ? 1 : 0;
    return at[2] - half >= base && meets(at[2] - half, at[2] + half) ? [wall(axis, at[axis], Math.abs(at[axis]) - half, part.id)] : [];
  });
  const all = [...plates, ...tubes];
  return all.filter((one) => !all.some((other) => other.face === one.face && other.reach < one.reach));
}

function wall(axis: 0 | 1, offset: number, reach: number, part: string): Wall {
  const before = offset < 0;
  return { face: axis === 1 ? (before ? 'front' : 'back') : (before ? 'left' : 'right'), reach, part };
}

/** Beside the mattress, pushed to one side, between walls that face each other: along its length, then its width. */
export function beddingGap(given: Case): readonly Gap[] {
  const mattress = mattressOf(given);
  if (mattress === null) return [];
  const walls = wallsOf(given);
  const sides = [[['left', 'right'], mattress.length], [['front', 'back'], mattress.width]] as const;
  return sides.flatMap(([faces, size]) => {
    const facing = faces.flatMap((face) => walls.filter((each) => each.face === face).slice(0, 1));
    const room = facing.reduce((sum, { reach }) => sum + reach, 0);
    return facing.length < 2 ? [] : [{ what: 'mattress and side', narrow: room - size, long: mattress.thickness, parts: facing.map(({ part }) => part) }];
  });
}

/** The mattress fits between its sides, with less beside it than traps a finger, mm; the worse of length and width. */
export const mattressGap: Check = (given) => beddingGap(given).map(({ narrow, parts }) => judge({
  name: 'mattress-gap', figure: narrow, limit: narrow < 0 ? 0 : given.limits.fingerLeast.value, bound: narrow < 0 ? 'least' : 'most', unit: 'mm',
  source: `pushed to one side; ${given.limits.fingerLeast.source}`, parts,
})).toSorted((a, b) => a.margin - b.margin).slice(0, 1);

/** On how many sides something holds the mattress from sliding. */
export const mattressHeld: Check = (given) => {
  const { model, limits: { heldSides } } = given;
  if (mattressOf(given) === null) return [];
  const walls = wallsOf(given);
  return [judge({
    name: 'mattress-held', figure: new Set(walls.map(({ face }) => face)).size, limit: heldSides.value, bound: 'least', unit: '1',
    source: heldSides.source, parts: walls.length > 0 ? walls.map(({ part }) => part) : idsOf(model, 'panel'),
  })];
};
