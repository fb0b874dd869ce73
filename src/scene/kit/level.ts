import { moved, type Vec3 } from '../../model/index.ts';
import { tell } from '../told.ts';
import type { Mark, Scene, SceneBody, View } from '../types.ts';
import { boxOfBlock, level, type Level } from './blocks.ts';
import { boxRound, type Box } from './extent.ts';
import { blockBody, outOf, propCounts, type NamedBlock } from './props.ts';
import type { StageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';

/** The floor's line is so thick, and goes so far past the work, as shares of how wide the picture is; but no thicker than this share of how high it is. */
const FLOOR = { thick: 0.008, most: 0.1, past: 0.04 } as const;
/** Lengths stand off what they measure by this share of how wide the picture is. */
const OFF = 0.06;
/** What is nearer to the work's end than this stands at it, mm. */
const AT_END = 5;

/**
 * Work on its blocks, seen level from beside: the floor, each block's place and height; how far in from the end of a bar
 * one stands that stands at no end of it. What stands before the blocks is cut away through the middle of the nearest.
 */
export function levelScene(id: string, hand: StageHand, shown: readonly string[], blocks: readonly NamedBlock[], isThere: (block: NamedBlock) => boolean, fresh: readonly string[]): Scene {
  const view = levelView(blocks);
  const cut = blocks.every(({ comes }) => comes === 'before') ? null : middleOf(nearest(blocks, view.towardsEye));
  const look = (each: string): SceneBody['look'] => (fresh.includes(each) ? 'new' : 'present');
  const work = shown.flatMap((each) => (cut === null ? hand.body(each, look(each)) : hand.bodyBehind(each, look(each), { at: cut, towardsEye: view.towardsEye }) ?? []));
  const bodies = [...work, ...blocks.map((block) => blockBody(hand, block, isThere(block) ? 'present' : 'new'))];
  const across = acrossOf(view);
  const box = boxRound(bodies);
  const wide = box.max[across] - box.min[across];
  return { id, view, bodies: [...bodies, floorUnder(hand, box, across, wide)], marks: [...heightMarks(blocks.filter((block) => !isThere(block)), box, across, wide), ...fromEnds(hand, blocks, across, wide)] };
}

const acrossOf = ({ towardsEye }: View): Level => (towardsEye[0] === 0 ? 0 : 1);

/** On the reader's side. */
const levelView = ([first]: readonly NamedBlock[]): View =>
  ({ towardsEye: first?.seenAlong === 1 ? [0, Math.sign(STANDARD_VIEW.towardsEye[1]), 0] : [Math.sign(STANDARD_VIEW.towardsEye[0]), 0, 0], up: [0, 0, 1] });

const nearest = (blocks: readonly NamedBlock[], [ex, ey]: Vec3): NamedBlock | undefined =>
  blocks.toSorted((a, b) => (b.at[0] - a.at[0]) * ex + (b.at[1] - a.at[1]) * ey)[0];
const middleOf = (block: NamedBlock | undefined): Vec3 => block?.at ?? [0, 0, 0];

function floorUnder(hand: StageHand, { min, max }: Box, across: Level, wide: number): SceneBody {
  const [width, height] = [0, 1].map((axis) => (max[axis as Level] - min[axis as Level]) + (axis === across ? 2 * FLOOR.past * wide : 0));
  const thickness = Math.min(FLOOR.thick * wide, FLOOR.most * (max[2] - min[2]));
  const at: Vec3 = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, min[2] - thickness];
  return hand.prop({ tool: 'floor' }, { form: 'plate', width: width ?? 0, height: height ?? 0, thickness, holes: [] }, moved(at), 'drawn');
}

/** The height of the block of each kind that stands nearest to the left or right end of the picture, told beyond that end; and how many there are. */
function heightMarks(blocks: readonly NamedBlock[], box: Box, across: Level, wide: number): readonly Mark[] {
  return [...new Set(propCounts(blocks).map(({ high }) => high))].flatMap((high): readonly Mark[] => {
    const own = blocks.filter(({ shape }) => Math.round(shape.thickness) === high);
    const ends = own.flatMap((block) => ([-1, 1] as const).map((side) => ({ block, side, inwards: inwardsOf(block, box, across, side) }))).toSorted((a, b) => a.inwards - b.inwards);
    const [first] = ends;
    if (first === undefined) return [];
    const { min, max } = boxOfBlock(first.block);
    const edge = (up: number): Vec3 => level(across, (first.side < 0 ? min : max)[across], min[across === 0 ? 1 : 0], up);
    return [
      { mark: 'length', from: edge(min[2]), to: edge(max[2]), away: level(across, first.side * (first.inwards + OFF * wide), 0), told: tell.mm(high) },
      { mark: 'label', at: outOf(first.block, 0), told: tell.times(own.length) },
    ];
  });
}

/** From the end of the picture on one side to that side of a block, mm. */
function inwardsOf(block: NamedBlock, { min, max }: Box, across: Level, side: -1 | 1): number {
  const own = boxOfBlock(block);
  return side < 0 ? own.min[across] - min[across] : max[across] - own.max[across];
}

/** How far in from a bar's end the blocks stand that stand at no end of it. */
function fromEnds(hand: StageHand, blocks: readonly NamedBlock[], across: Level, wide: number): readonly Mark[] {
  const inner = blocks.find(({ leavesEarly }) => leavesEarly);
  if (inner === undefined) return [];
  const [bar, own] = [boxRound(inner.holds.map((id) => hand.body(id, 'present'))), boxOfBlock(inner)];
  const [low, high] = [own.min[across] - bar.min[across], bar.max[across] - own.max[across]];
  const [from, to] = low < high ? [bar.min[across], own.min[across]] : [own.max[across], bar.max[across]];
  const at = (place: number): Vec3 => level(across, place, own.min[across === 0 ? 1 : 0], bar.min[2]);
  return to - from < AT_END ? [] : [{ mark: 'length', from: at(from), to: at(to), away: [0, 0, -OFF * wide], told: tell.mm(Math.round(to - from)) }];
}
