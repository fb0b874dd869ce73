import { extentOf } from './extent.ts';
import type { Model, NamedLength, Vec3 } from './types.ts';

/**
 * Lettered lengths for the drawing and the table, mm: the room that the finished item takes over everything that stands out,
 * and how high above the floor things lie on its lowest deck and how far above that on the next.
 * @param tops heights of the lowest decks' upper faces in the coordinates of the parts, mm; none where the item has no decks.
 */
export function dimensionsOf(model: Pick<Model, 'parts' | 'connections' | 'kit'>, [low, next]: readonly number[] = []): readonly NamedLength[] {
  const { min: [left, front, floor], max: [right, back, high] } = extentOf(model);
  const upright = (name: string, from: number, to: number): Omit<NamedLength, 'letter'> => ({ name, value: Math.abs(to - from), from: [right, front, from], to: [right, front, to] });
  const wide: readonly (readonly [string, Vec3, Vec3])[] = [
    ['width', [left, front, floor], [right, front, floor]], ['depth', [right, front, floor], [right, back, floor]], ['height', [left, front, floor], [left, front, high]],
  ];
  const lengths = [
    ...wide.map(([name, from, to]) => ({ name, from, to, value: Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]) })),
    ...low === undefined ? [] : next === undefined ? [upright('deck-top', floor, low)] : [upright('lowest-deck', floor, low), upright('deck-spacing', low, next)],
  ];
  return lengths.map((length, index) => ({ letter: 'PQRSTUVW'[index] ?? '', ...length }));
}
