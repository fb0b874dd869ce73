import { endsOfTube, placed, tubeSection, type Model, type Part, type Vec3 } from '../../model/index.ts';
import type { SwayCable, SwayInput, SwayLevel, SwayPlate, SwayPost } from '../frame/index.ts';
import type { Limits } from '../limits.ts';
import { partsOf } from '../parts.ts';

/** The item as posts, levels, cables and plates, read from where its parts really are, under a push of 1 N. */
export function standInputOf(model: Model, limits: Limits): SwayInput {
  const { tube, cable } = model.kit;
  const { area, secondMoment: second } = tubeSection(model.kit);
  const posts = partsOf(model, 'post').flatMap(postOf);
  return {
    posts, levels: levelsOf(model, posts), cables: cablesOf(model, posts), plates: platesOf(model, posts, limits),
    tube: { modulus: tube.modulus, usedStockFactor: tube.usedStockFactor, area, second },
    cableStiffness: cable.stiffness,
    force: 1,
  };
}

function postOf(part: Part): readonly SwayPost[] {
  const ends = endsOfTube(part);
  if (!ends) return [];
  const [foot, top] = ends.toSorted((a, b) => a[2] - b[2]);
  return foot && top ? [{ x: foot[0], y: foot[1], foot: foot[2], top: top[2] }] : [];
}

function nearestPost(posts: readonly SwayPost[], [x, y]: Vec3): number {
  const far = posts.map((post) => Math.hypot(post.x - x, post.y - y));
  return far.indexOf(Math.min(...far));
}

function levelsOf(model: Model, posts: readonly SwayPost[]): readonly SwayLevel[] {
  return model.groups.flatMap((group): SwayLevel[] => {
    const tubes = partsOf(model, 'long-tube', 'short-tube').filter((part) => part.group === group.name);
    const [first] = tubes;
    if (!first) return [];
    return [{
      height: placed(first.pose, [0, 0, 0])[2], stiffened: group.kind === 'deck',
      tubes: tubes.flatMap((tube) => tubeEnds(tube, posts)),
    }];
  });
}

function tubeEnds(tube: Part, posts: readonly SwayPost[]): readonly (readonly [number, number])[] {
  const ends = endsOfTube(tube);
  return ends ? [[nearestPost(posts, ends[0]), nearestPost(posts, ends[1])]] : [];
}

const cablesOf = (model: Model, posts: readonly SwayPost[]): readonly SwayCable[] => partsOf(model, 'cable').flatMap(({ shape, pose }) => {
  if (shape.form !== 'cable') return [];
  const [from, to] = [placed(pose, [0, 0, 0]), placed(pose, [shape.length, 0, 0])];
  return [{ from: { post: nearestPost(posts, from), height: from[2] }, to: { post: nearestPost(posts, to), height: to[2] } }];
});

/** The tubes that a flat panel is pinned to, and the places of its pins. */
export interface PinnedPlate {
  readonly plate: Part;
  readonly tubes: readonly { readonly tube: Part; readonly pins: readonly Vec3[] }[];
}

export function pinnedPlates(model: Model): readonly PinnedPlate[] {
  const part = (id: string | undefined): Part | undefined => model.parts.find((each) => each.id === id);
  return partsOf(model, 'flat-panel').map((plate) => {
    const held = model.joinings.flatMap((joining) => {
      if (joining.by !== 'plate-pin' || joining.plate !== plate.id) return [];
      const [pin, tube] = [part(joining.pin), part(joining.tube)];
      return pin && tube ? [{ tube, at: placed(pin.pose, [0, 0, 0]) }] : [];
    });
    const tubes = [...new Set(held.map(({ tube }) => tube))].toSorted((a, b) => placed(a.pose, [0, 0, 0])[2] - placed(b.pose, [0, 0, 0])[2]);
    return { plate, tubes: tubes.map((tube) => ({ tube, pins: held.filter((each) => each.tube === tube).map(({ at }) => at) })) };
  });
}

/**
 * In-plane stiffness of a flat panel between its outermost pins, w apart along and h up: skins alone, t = 2 t_f.
 * Racking stiffness G t w / h given to two crossed struts of length l, each E A cos² / l (statics): E A = G t l³ / 2 w h;
 * each upright edge stands for half the width.
 */
function platesOf(model: Model, posts: readonly SwayPost[], limits: Limits): readonly SwayPlate[] {
  const { skin, skinModulus, usedStockFactor } = model.kit.panel;
  const modulus = skinModulus * usedStockFactor;
  const shear = modulus / (2 * (1 + limits.skinPoisson.value));
  return pinnedPlates(model).flatMap(({ tubes }) => {
    const [low, high] = tubes;
    const [ends] = low ? tubeEnds(low.tube, posts) : [];
    if (!low || !high || !ends) return [];
    const post = posts[ends[0]];
    const along = low.pins.map(([x, y]) => alongTube(post, posts[ends[1]], [x, y]));
    const [from, to] = [Math.min(...along), Math.max(...along)];
    const heights = [low, high].map(({ tube }) => placed(tube.pose, [0, 0, 0])[2]);
    const [bottom = 0, top = 0] = heights;
    const [width, height] = [to - from, top - bottom];
    if (width < 1 || height < 1) return [];
    return [{
      posts: ends, low: bottom, high: top, from, to,
      strutStiffness: (shear * 2 * skin * Math.hypot(width, height) ** 3) / (2 * width * height),
      edgeStiffness: (modulus * 2 * skin * width) / 2,
    }];
  });
}

/** Distance of a point from the first post, measured along the line to the second, mm. */
function alongTube(a: SwayPost | undefined, b: SwayPost | undefined, [x, y]: readonly [number, number]): number {
  if (!a || !b) return 0;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  return ((x - a.x) * dx + (y - a.y) * dy) / Math.hypot(dx, dy);
}
