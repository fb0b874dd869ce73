import { joinedBy } from './connections.ts';
import type { Model } from './types.ts';

/** A post leaves its joint downwards where it is no further off the plumb than this (the cosine). */
const PLUMB = 0.999;

/**
 * The bars that come off when the item is lifted by them: both ends are in joints that are pushed onto posts from above,
 * and no pin, panel or cord holds the bar or those joints.
 */
export function liftsOff({ parts, connections }: Pick<Model, 'parts' | 'connections'>): readonly string[] {
  const ofPart = (id: string): Model['connections'] => connections.filter((each) => joinedBy(each).includes(id));
  const isPushedOn = (joint: string, bar: string): boolean => ofPart(joint).every((each) => each.is === 'socket' && (each.bar === bar || each.out[2] < -PLUMB));
  return parts.filter(({ id, shape }) => {
    const own = shape.form === 'tube' ? ofPart(id) : [];
    return own.length === 2 && own.every((each) => each.is === 'socket' && isPushedOn(each.joint, id));
  }).map(({ id }) => id);
}
