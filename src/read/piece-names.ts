import { messages } from './messages.ts';
import type { Face, Fault, Piece } from './types.ts';
import { sectionEntries } from './validate.ts';
import type { FieldPath, YamlSource } from './yaml-source.ts';

/** Heights that a deck or frame makes known to the pieces below it in the file. */
export type Point = 'level' | 'top' | 'high';

/**
 * The name by which later expressions call a height of a deck or frame, for example `foot_frame_level`:
 * `level` the middle of its tubes and, of a deck only, `top` its upper face (both of the lowest when
 * repeated); `high` the middle of the highest one's tubes.
 */
export function pointName(piece: string, point: Point): string {
  return `${piece.replaceAll('-', '_')}_${point}`;
}

/** All names that a piece of this kind gives to later ones. */
export function pointNames(piece: string, is: 'deck' | 'frame'): readonly string[] {
  const points: readonly Point[] = is === 'deck' ? ['level', 'top', 'high'] : ['level', 'high'];
  return points.map((point) => pointName(piece, point));
}

/** The pieces that say what they are, well written or not, in the order of the file. */
export function declaredPieces(raw: unknown): readonly { readonly name: string; readonly is: Piece['is'] }[] {
  return sectionEntries(raw).flatMap(([name, piece]) => {
    const is = new Map(sectionEntries(piece)).get('is');
    return is === 'deck' || is === 'frame' || is === 'post' || is === 'panel' ? [{ name, is }] : [];
  });
}

/** Names of the declared pieces of some kinds. */
export function namesOfKind(raw: unknown, ...kinds: readonly Piece['is'][]): readonly string[] {
  return declaredPieces(raw).filter(({ is }) => kinds.includes(is)).map(({ name }) => name);
}

/** Faults of pieces whose points would have the name of a parameter or expression. */
export function pointFaults(source: YamlSource, raw: unknown, taken: readonly string[]): Fault[] {
  return declaredPieces(raw).flatMap(({ name, is }) => {
    const clash = is === 'deck' || is === 'frame' ? pointNames(name, is).find((point) => taken.includes(point)) : undefined;
    return clash === undefined ? [] : [source.faultAtName(['pieces', name], messages.pointTaken(clash))];
  });
}

/** What a field gives as one word or a list, each with its place. */
export function placedWords<Word extends string>(given: Word | readonly Word[], path: FieldPath): readonly { readonly word: Word; readonly path: FieldPath }[] {
  return typeof given === 'string' ? [{ word: given, path }] : given.map((word, place) => ({ word, path: [...path, place] }));
}

/** True when a frame with tubes on `sides` has corner joints at both ends of `face`. */
export function hasCornersOf(face: Face, sides: readonly Face[]): boolean {
  const neighbours: readonly Face[] = face === 'left' || face === 'right' ? ['front', 'back'] : ['left', 'right'];
  return sides.includes(face) || neighbours.every((side) => sides.includes(side));
}
