import { refuseUnsoundSway, type SwayInput, type SwayLevel } from './sway-input.ts';
import type { Cable, Frame, FrameNode, Member, NodeLoad, Section } from './types.ts';

export interface Push {
  readonly along: 'x' | 'y';
  readonly way: 1 | -1;
}

/** Heights nearer than this are one joint, mm. */
const SAME = 1;
/** How much stiffer than a tube a panel's diagonals are: far enough for a stiff plate, near enough for arithmetic. */
const STIFF = 100;

const pin = { from: ['rx', 'ry', 'rz'], to: ['rx', 'ry', 'rz'] } as const;

/** The frame under a push shared evenly by the corners of the top level. Errors: FrameError. */
export function pushedFrame(input: SwayInput, { along, way }: Push): Frame {
  refuseUnsoundSway(input);
  const heights = heightsOf(input);
  const { height, corners } = topLevel(input);
  const share = (way * input.force) / corners.length;
  return {
    nodes: heights.flatMap((list, post) => list.map((level) => nodeAt(input, heights, post, level))),
    members: [...postsOf(input, heights), ...tubesOf(input, heights), ...panelsOf(input, heights)],
    cables: cablesOf(input, heights),
    supports: heights.map((list, post) => ({ node: nodeName(heights, post, list[0] ?? 0), held: ['ux', 'uy', 'uz'] })),
    nodeLoads: corners.map((post): NodeLoad => ({
      node: nodeName(heights, post, height), force: along === 'x' ? [share, 0, 0] : [0, share, 0],
    })),
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

const cornersOf = ({ tubes }: SwayLevel): readonly number[] => [...new Set(tubes.flat())].toSorted((a, b) => a - b);

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

const tubesOf = (input: SwayInput, heights: Heights): readonly Member[] => input.levels.flatMap((level, index) =>
  level.tubes.map(([a, b]): Member => ({
    name: `level ${index} tube ${a}-${b}`,
    from: nodeName(heights, a, level.height), to: nodeName(heights, b, level.height), section: tubeSection(input), released: pin,
  })));

/** Every pair of a stiffened level's corners is tied by a stiff bar, pinned at its ends. */
function panelsOf(input: SwayInput, heights: Heights): readonly Member[] {
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
