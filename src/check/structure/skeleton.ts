import { lengthOf, minus, placed, plus, times, endsOfTube, unit, type Model, type Part, type Vec3 } from '../../model/index.ts';
import { partsOf } from '../parts.ts';
import { alongLine } from './vectors.ts';

/** Where a joint holds a bar; `at` mm from the bar's beginning, where the axes meet. */
export interface Hold {
  readonly joint: string;
  readonly by: 'socket' | 'sleeve';
  readonly at: number;
}

/** A tube as a line between its sawn ends, with the joints that hold it in order. */
export interface BarLine {
  readonly id: string;
  readonly part: Part;
  readonly from: Vec3;
  readonly to: Vec3;
  readonly along: Vec3;
  readonly outside: number;
  readonly inside: number;
  readonly holds: readonly Hold[];
}

/** An item's bars and joints as lines and points, mm. */
export interface Skeleton {
  readonly model: Model;
  readonly bars: readonly BarLine[];
  readonly joints: ReadonlyMap<string, Vec3>;
}

export function skeletonOf(model: Model): Skeleton {
  const joints = new Map(partsOf(model, 'joint').map(({ id, pose }) => [id, placed(pose, [0, 0, 0])] as const));
  return { model, joints, bars: partsOf(model, 'bar').flatMap((part) => barLine(model, joints, part)) };
}

function barLine(model: Model, joints: Skeleton['joints'], part: Part): readonly BarLine[] {
  const { shape } = part;
  const ends = endsOfTube(part);
  if (ends === null || shape.form !== 'tube') return [];
  const [from, to] = ends;
  const along = unit(minus(to, from));
  const holds = model.connections.flatMap((held): readonly Hold[] => {
    if ((held.is !== 'socket' && held.is !== 'sleeve') || held.bar !== part.id) return [];
    const at = joints.get(held.joint);
    return at === undefined ? [] : [{ joint: held.joint, by: held.is, at: alongLine(from, along, at) }];
  });
  return [{ id: part.id, part, from, to, along, outside: shape.outside, inside: shape.inside, holds: holds.toSorted((a, b) => a.at - b.at) }];
}

export const lengthOfBar = ({ from, to }: BarLine): number => lengthOf(minus(to, from));

export const onBar = ({ from, along }: BarLine, at: number): Vec3 => plus(from, times(along, at));

/** The bar that runs through a joint's sleeve, if any. */
export const throughJoint = ({ bars }: Skeleton, joint: string): BarLine | undefined =>
  bars.find(({ holds }) => holds.some((hold) => hold.joint === joint && hold.by === 'sleeve'));

/** Bars that run through sleeves: the posts of the item. */
export const postsIn = ({ bars }: Skeleton): readonly BarLine[] => bars.filter(({ holds }) => holds.some(({ by }) => by === 'sleeve'));

/** Ids of the posts, or of all bars where nothing runs through a sleeve. */
export function standingIds(skeleton: Skeleton): readonly string[] {
  const posts = postsIn(skeleton);
  return (posts.length > 0 ? posts : skeleton.bars).map(({ id }) => id);
}
