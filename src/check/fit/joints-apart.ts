import { endsOfTube, placed, type Model } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { distance, partsOf } from '../parts.ts';
import type { Check } from '../types.ts';

interface Sleeve {
  readonly id: string;
  readonly post: string;
  readonly low: number;
  readonly high: number;
}

/** Joints on their posts, with the heights of their sleeves' ends, whichever way up they are. */
function sleevesOf(model: Model): readonly Sleeve[] {
  const posts = partsOf(model, 'post').map((post) => ({ id: post.id, at: placed(post.pose, [0, 0, 0]) }));
  return partsOf(model, 'joint').flatMap(({ id, shape, pose }) => {
    if (shape.form !== 'joint') return [];
    const [x, y] = placed(pose, [0, 0, 0]);
    const [post] = posts.toSorted((a, b) => distance([a.at[0], a.at[1], 0], [x, y, 0]) - distance([b.at[0], b.at[1], 0], [x, y, 0]));
    const ends = [placed(pose, [0, 0, shape.joint.sleeveAbove])[2], placed(pose, [0, 0, -shape.joint.sleeveBelow])[2]];
    return post ? [{ id, post: post.id, low: Math.min(...ends), high: Math.max(...ends) }] : [];
  });
}

/** Every two neighbouring joints on one post and the gap between their sleeves, mm; under 0 they run into each other. */
export function sleevePairs(model: Model): readonly { readonly gap: number; readonly ids: readonly string[] }[] {
  const sleeves = sleevesOf(model).toSorted((a, b) => a.low - b.low);
  return sleeves.flatMap((one, index) => {
    const next = sleeves.slice(index + 1).find(({ post }) => post === one.post);
    return next ? [{ gap: next.low - one.high, ids: [one.id, next.id] }] : [];
  });
}

/** The least gap between the sleeves of neighbouring joints on one post, mm. */
export const jointsApart: Check = ({ model }) => {
  const pairs = sleevePairs(model);
  if (pairs.length === 0) return [];
  const closest = Math.min(...pairs.map(({ gap }) => gap));
  return [judge({
    name: 'joints-apart', figure: closest, limit: 0, bound: 'least', unit: 'mm', source: 'geometry: sleeves one over the other (C)',
    parts: pairs.filter(({ gap }) => gap <= closest + 1e-6).flatMap(({ ids }) => ids),
  })];
};

/** How far the post goes through the highest and lowest sleeve on it, mm; under 0 it ends inside or short of it. */
export const postReach: Check = ({ model }) => {
  const sleeves = sleevesOf(model);
  const reaches = partsOf(model, 'post').flatMap((post) => {
    const heights = endsOfTube(post)?.map((end) => end[2]) ?? [];
    const own = sleeves.filter((sleeve) => sleeve.post === post.id);
    if (own.length === 0) return [];
    const over = Math.max(...heights) - Math.max(...own.map(({ high }) => high));
    const under = Math.min(...own.map(({ low }) => low)) - Math.min(...heights);
    return [{ id: post.id, reach: Math.min(over, under) }];
  });
  if (reaches.length === 0) return [];
  const least = Math.min(...reaches.map(({ reach }) => reach));
  return [judge({
    name: 'post-reach', figure: least, limit: 0, bound: 'least', unit: 'mm', source: 'geometry: a sleeve all on its post (C)',
    parts: reaches.filter(({ reach }) => reach <= least + 1e-6).map(({ id }) => id),
  })];
};
