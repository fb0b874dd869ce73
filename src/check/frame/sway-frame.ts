import { plateMembers, platesOn, tubeStretches, type Stretch } from './sway-plates.ts';
import { refuseUnsoundSway, SAME, type SwayInput, type SwayLevel } from './sway-input.ts';
import type { Cable, Frame, FrameNode, Member, NodeLoad, Section } from './types.ts';

/** A force in N on a post at a height, x and y, and downwards. */
export interface SwayLoad {
  readonly post: number;
  readonly height: number;
  readonly force: readonly [number, number];
  readonly down?: number;
}

/** How much stiffer than a tube a panel's diagonals are: far enough for a stiff plate, near enough for arithmetic. */
const STIFF = 100;

const PIN = ['rx', 'ry', 'rz'] as const;

/** The frame under forces on its posts. Errors: FrameError. */
export function frameUnder(input: SwayInput, loads: readonly SwayLoad[]): Frame {
  refuseUnsoundSway(input);
  const heights = heightsOf(input);
  const stretches = stretchesOf(input, heights);
  return {
    nodes: [
      ...heights.flatMap((list, post) => list.map((level) => nodeAt(input, heights, post, level))),
      ...stretches.flatMap(({ pins }) => pins),
    ],
    members: [...postsOf(input, heights), ...stretches.flatMap((stretch) => tubesOf(input, stretch)), ...decksOf(input, heights), ...plateMembers(input, stretches)],
    cables: cablesOf(input, heights),
    supports: heights.map((list, post) => ({ node: nodeName(heights, post, list[0] ?? 0), held: ['ux', 'uy', 'uz'] })),
    nodeLoads: loads.map(({ post, height, force: [x, y], down = 0 }): NodeLoad => ({ node: nodeName(heights, post, height), force: [x, y, -down] })),
    lineLoads: [],
  };
}

/** Joints on each post from its foot up: feet, levels and cables' ends, mm. */
export type Heights = readonly (readonly number[])[];

export const heightsOf = ({ posts, levels, cables }: SwayInput): Heights => posts.map(({ foot }, post) => {
  const on = [
    foot,
    ...levels.filter((level) => cornersOf(level).includes(post)).map(({ height }) => height),
    ...cables.flatMap(({ from, to }) => [from, to]).filter((end) => end.post === post).map(({ height }) => height),
  ].toSorted((a, b) => a - b);
  return on.reduce<readonly number[]>((kept, height) => (height - (kept.at(-1) ?? -Infinity) > SAME ? [...kept, height] : kept), []);
});

/** Name of the joint on a post that is nearest to a height. */
export function nodeName(heights: Heights, post: number, height: number): string {
  const gaps = (heights[post] ?? []).map((own) => Math.abs(own - height));
  return `post ${post} joint ${gaps.indexOf(Math.min(...gaps))}`;
}

/** The highest level with tubes and the posts at its corners. */
export function topLevel({ levels }: SwayInput): { readonly height: number; readonly corners: readonly number[] } {
  const [top] = levels.filter(({ tubes }) => tubes.length > 0).toSorted((a, b) => b.height - a.height);
  return { height: top?.height ?? 0, corners: top ? cornersOf(top) : [] };
}

/** The posts at a level's corners. */
export const cornersOf = ({ tubes }: SwayLevel): readonly number[] => [...new Set(tubes.flat())].toSorted((a, b) => a - b);

function nodeAt({ posts }: SwayInput, heights: Heights, post: number, height: number): FrameNode {
  return { name: nodeName(heights, post, height), at: [posts[post]?.x ?? 0, posts[post]?.y ?? 0, height] };
}

function tubeSection({ tube }: SwayInput): Section {
  const modulus = tube.modulus * tube.usedStockFactor;
  // A post may spin in its joints: no twist.
  return { EA: modulus * tube.area, EIy: modulus * tube.second, EIz: modulus * tube.second, GJ: 0 };
}

const postsOf = (input: SwayInput, heights: Heights): readonly Member[] => heights.flatMap((list, post) =>
  list.slice(1).map((height, index): Member => ({
    name: `post ${post} stretch ${index}`,
    from: nodeName(heights, post, list[index] ?? 0), to: nodeName(heights, post, height), section: tubeSection(input),
  })));

/** Names of the members that the posts are made of. */
export const postStretches = (input: SwayInput): readonly string[] => postsOf(input, heightsOf(input)).map(({ name }) => name);

/** Every tube of every level, with the places where a plate is pinned to it. */
const stretchesOf = (input: SwayInput, heights: Heights): readonly Stretch[] => input.levels.flatMap((level, index) =>
  level.tubes.map(([a, b]) => tubeStretches(input, {
    name: `level ${index} tube ${a}-${b}`, posts: [a, b], height: level.height,
    from: nodeName(heights, a, level.height), to: nodeName(heights, b, level.height),
  }, platesOn(input, level, [a, b]))));

/** The lengths of one tube between its joints and pins; pinned to the posts. */
function tubesOf(input: SwayInput, { tube, pins }: Stretch): readonly Member[] {
  const nodes = [tube.from, ...pins.map(({ name }) => name), tube.to];
  return nodes.slice(1).map((to, index): Member => ({
    name: pins.length === 0 ? tube.name : `${tube.name} stretch ${index}`,
    from: nodes[index] ?? '', to, section: tubeSection(input),
    released: { from: index === 0 ? PIN : [], to: to === tube.to ? PIN : [] },
  }));
}

/** Every pair of a stiffened level's corners is tied by a stiff bar, pinned at its ends. */
function decksOf(input: SwayInput, heights: Heights): readonly Member[] {
  const section = { EA: STIFF * tubeSection(input).EA, EIy: 0, EIz: 0, GJ: 0 };
  return input.levels.flatMap((level, index) => {
    if (!level.stiffened) return [];
    const corners = cornersOf(level);
    return corners.flatMap((a, i) => corners.slice(i + 1).map((b): Member => ({
      name: `level ${index} panel ${a}-${b}`,
      from: nodeName(heights, a, level.height), to: nodeName(heights, b, level.height), section,
    })));
  });
}

const cablesOf = (input: SwayInput, heights: Heights): readonly Cable[] => input.cables.map(({ from, to }, index) => ({
  name: `cable ${index}`,
  from: nodeName(heights, from.post, from.height), to: nodeName(heights, to.post, to.height), EA: input.cableStiffness,
}));
