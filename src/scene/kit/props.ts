import { moved, plus, times, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import type { Look, SceneBody } from '../types.ts';
import { blocksOf, type Block } from './blocks.ts';
import type { StageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';

/** A block with its name in all scenes of a step. */
export interface NamedBlock extends Block {
  readonly name: string;
}

export const namedBlocks = (hand: StageHand, step: Step): readonly NamedBlock[] => blocksOf(hand, step).map((block, index) => ({ ...block, name: `block-${index + 1}` }));

/** A block on the stage, moved off its place. */
export const blockBody = (hand: StageHand, { name, shape, at }: NamedBlock, look: Look, off: Vec3 = [0, 0, 0]): SceneBody => hand.prop({ tool: name }, shape, moved(plus(at, off)), look);

/** The blocks that hold what a step has propped, but for those that leave while it is done. */
export const propBodies = (hand: StageHand, step: Step): readonly SceneBody[] =>
  namedBlocks(hand, step).filter(({ leavesEarly }) => !leavesEarly).map((block) => blockBody(hand, block, 'present'));

/** How many blocks there are of each height, mm, the lowest first. */
export function propCounts(hand: StageHand, step: Step): readonly PropCount[] {
  const heights = blocksOf(hand, step).map(({ shape }) => Math.round(shape.thickness));
  return [...new Set(heights)].sort((a, b) => a - b).map((high) => ({ high, count: heights.filter((each) => each === high).length }));
}

export interface PropCount {
  readonly high: number;
  readonly count: number;
}

/** Those nearest to the eye first. */
export function nearestFirst<Some extends Block>(blocks: readonly Some[]): readonly Some[] {
  const [ex, ey] = STANDARD_VIEW.towardsEye;
  return blocks.toSorted((a, b) => (b.at[0] - a.at[0]) * ex + (b.at[1] - a.at[1]) * ey);
}

/** The middle of a block's top. */
export const topOf = ({ at, shape }: Block): Vec3 => plus(at, [0, 0, shape.thickness]);

/** The middle of a block, so far out of its place, mm. */
export const outOf = ({ at, out, shape }: Block, far: number): Vec3 => plus(plus(at, times(out, far)), [0, 0, shape.thickness / 2]);

/** From a block's middle to its side on its way out, mm. */
export const halfOut = ({ out: [x, , z], shape }: Block): number => (Math.abs(z) > 0.5 ? shape.thickness : Math.abs(x) > 0.5 ? shape.width : shape.height) / 2;
