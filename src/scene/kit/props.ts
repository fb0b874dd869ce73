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

/** Whether the work of a step, or what it has propped, is on blocks when it begins. */
export const isOnBlocks = ({ props, footing }: Step): boolean => props.length + footing.before.length > 0;

/** The blocks that a step's work lies on and those that hold what it has propped, but for those that leave while it is done. */
export const propBodies = (hand: StageHand, step: Step): readonly SceneBody[] =>
  namedBlocks(hand, step).filter(({ leavesEarly }) => !leavesEarly).map((block) => blockBody(hand, block, 'present'));

/** So many blocks of a height, mm; no thicker than `most`, mm, where there is little room. */
export interface PropCount {
  readonly high: number;
  readonly most: number | null;
  readonly count: number;
}

/** How many blocks there are of each kind, as `countedByKind` has them. */
export const propCounts = (blocks: readonly Block[]): readonly PropCount[] =>
  countedByKind(blocks.map(({ shape, most }) => ({ high: Math.round(shape.thickness), most, count: 1 })), (counts) => counts.length);

/** Each kind once, its counts made one: the lowest first, and of a height those that may be as thick as one likes. */
export const countedByKind = (all: readonly PropCount[], count: (counts: readonly number[]) => number): readonly PropCount[] =>
  all.filter((kind, index) => all.findIndex((other) => isSameKind(kind, other)) === index)
    .map((kind) => all.filter((other) => isSameKind(kind, other)))
    .map((own): PropCount => ({ high: own[0]?.high ?? 0, most: thinnest(own), count: count(own.map((other) => other.count)) }))
    .sort((one, other) => one.high - other.high || (other.most ?? Infinity) - (one.most ?? Infinity));

/** Blocks no higher than this stand as firmly when they are thin: where one must be, all of their height are made so, mm. */
const LOW = 60;

/** Whether blocks are made alike. */
export const isSameKind = (one: Pick<PropCount, 'high' | 'most'>, other: Pick<PropCount, 'high' | 'most'>): boolean => one.high === other.high && (one.high <= LOW || one.most === other.most);

function thinnest(own: readonly PropCount[]): number | null {
  const limits = own.flatMap(({ most }) => most ?? []);
  return limits.length === 0 ? null : Math.min(...limits);
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
