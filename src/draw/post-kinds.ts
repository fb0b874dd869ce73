import { tubeLetters } from '../cut/index.ts';
import type { Model } from '../model/index.ts';
import { sleeveEnds } from '../scene/index.ts';

/** What is marked on a post, mm from its foot: the lower end of each sleeve, and its holes. */
export interface Post {
  readonly length: number;
  readonly marks: readonly number[];
  readonly holes: readonly number[];
}

/** A post, how many of the item's are like it, and their ids. */
export interface PostKind extends Post {
  readonly count: number;
  readonly ids: readonly string[];
}

/** Posts with these sleeves are marked alike, whatever holes are drilled later. */
export const markedAlike = (one: Post, other: Post): boolean => one.length === other.length && String(one.marks) === String(other.marks);

export const madeAlike = (one: Post, other: Post): boolean => markedAlike(one, other) && String(one.holes) === String(other.holes);

/** One of each kind of bar that goes through joints, in the order of the model. */
export function postKinds(model: Model, alike: (one: Post, other: Post) => boolean): readonly PostKind[] {
  const posts = model.parts.flatMap(({ id, shape }): readonly (Post & { readonly id: string })[] => {
    const marks = sleeveEnds(model, id);
    return shape.form === 'tube' && marks.length > 0 ? [{ id, length: shape.length, marks, holes: shape.holes.map(({ at }) => at + shape.length / 2) }] : [];
  });
  return posts
    .filter((post, index) => posts.findIndex((other) => alike(post, other)) === index)
    .map(({ id: _, ...post }) => {
      const ids = posts.filter((other) => alike(post, other)).map(({ id }) => id);
      return { ...post, count: ids.length, ids };
    });
}

/** What is written on each tube by its id: the letter of its length, and a number behind it where tubes of that length are marked in several ways. */
export function lettersWritten(model: Model): ReadonlyMap<string, string> {
  const letterOf = tubeLetters(model);
  const kinds = postKinds(model, markedAlike).map(({ length, ids }) => ({ ids, letter: letterOf(length) }));
  const plain = model.parts.flatMap(({ id, shape }): [string, string][] => {
    const letter = shape.form === 'tube' ? letterOf(shape.length) : null;
    return letter === null ? [] : [[id, letter]];
  });
  const marked = new Set(kinds.flatMap(({ ids }) => ids));
  const isShared = (letter: string): boolean => kinds.filter((kind) => kind.letter === letter).length > 1 || plain.some(([id, own]) => own === letter && !marked.has(id));
  const numbered = kinds.flatMap(({ ids, letter }, index): [string, string][] => (letter === null || !isShared(letter) ? []
    : ids.map((id) => [id, `${letter}${kinds.slice(0, index + 1).filter((kind) => kind.letter === letter).length}`])));
  return new Map([...plain, ...numbered]);
}
