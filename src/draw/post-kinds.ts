import type { Model } from '../model/index.ts';
import { sleeveEnds } from '../scene/index.ts';

/** What is marked on a post, mm from its foot: the lower end of each sleeve, and its holes. */
export interface Post {
  readonly length: number;
  readonly marks: readonly number[];
  readonly holes: readonly number[];
}

/** A post, and how many of the item's are like it. */
export interface PostKind extends Post {
  readonly count: number;
}

/** Posts with these sleeves are marked alike, whatever holes are drilled later. */
export const markedAlike = (one: Post, other: Post): boolean => one.length === other.length && String(one.marks) === String(other.marks);

export const madeAlike = (one: Post, other: Post): boolean => markedAlike(one, other) && String(one.holes) === String(other.holes);

/** One of each kind of bar that goes through joints, in the order of the model. */
export function postKinds(model: Model, alike: (one: Post, other: Post) => boolean): readonly PostKind[] {
  const posts = model.parts.flatMap(({ id, shape }): readonly Post[] => {
    const marks = sleeveEnds(model, id);
    return shape.form === 'tube' && marks.length > 0 ? [{ length: shape.length, marks, holes: shape.holes.map(({ at }) => at + shape.length / 2) }] : [];
  });
  return posts
    .filter((post, index) => posts.findIndex((other) => alike(post, other)) === index)
    .map((post) => ({ ...post, count: posts.filter((other) => alike(post, other)).length }));
}
