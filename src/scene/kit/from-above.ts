import { plus, times, type Vec3 } from '../../model/index.ts';
import { tell } from '../told.ts';
import type { Mark, Scene, SceneBody, View } from '../types.ts';
import { boxOfBlock, level, type Level } from './blocks.ts';
import { boxRound, middleOf, type Box } from './extent.ts';
import { blockBody, type NamedBlock } from './props.ts';
import type { StageHand } from './stage.ts';

/** What is higher over the blocks than this, mm, is cut away: the lowest bars and the sleeves on them are whole. */
const SHOWN = 45;
/** A block this near to a joint's side stands at it: that is seen without a figure, mm. */
const AT_JOINT = 15;
/** Lengths stand off what they measure by this share of how wide the picture is. */
const OFF = 0.09;

const FROM_ABOVE: Vec3 = [0, 0, 1];

/** The longer direction of the work goes across the paper, which is wide. */
const viewOver = ({ min, max }: Box): View => ({ towardsEye: FROM_ABOVE, up: max[1] - min[1] > max[0] - min[0] ? [-1, 0, 0] : [0, 1, 0] });

/**
 * The lowest bars of work on its blocks, seen from above: which bar each block is under, and how far along it from the
 * nearest side of a joint, where it does not stand at one; each distance once.
 */
export function fromAboveScene(id: string, hand: StageHand, shown: readonly string[], blocks: readonly NamedBlock[]): Scene {
  const top = Math.max(...blocks.map((block) => boxOfBlock(block).max[2]));
  const cut = { at: [0, 0, top + SHOWN] as Vec3, towardsEye: FROM_ABOVE };
  const work = shown.flatMap((each) => hand.bodyBehind(each, 'present', cut) ?? []);
  const bodies = [...work, ...blocks.map((block) => blockBody(hand, block, 'new'))];
  const box = boxRound(bodies);
  const joints = work.filter(({ kind }) => kind === 'joint');
  const found = blocks.flatMap((block) => placeOf(hand, joints, block) ?? []);
  const once = found.filter(({ far }, index) => found.findIndex((other) => other.far === far) === index);
  return { id, view: viewOver(box), bodies, marks: once.map((each) => lengthMark(each, box)) };
}

/** A block's place along its bar. */
interface PlaceAlong {
  readonly block: NamedBlock;
  readonly axis: Level;
  /** The joint's side and the block's on the axis, and how far they are apart, mm. */
  readonly from: number;
  readonly to: number;
  readonly far: number;
}

/** From the nearest side of a joint on the same line; null where the block stands at it. */
function placeOf(hand: StageHand, joints: readonly SceneBody[], block: NamedBlock): PlaceAlong | null {
  const held = boxRound(block.holds.filter((id) => hand.part(id).kind !== 'panel').map((id) => hand.body(id, 'present')));
  const axis: Level = held.max[0] - held.min[0] >= held.max[1] - held.min[1] ? 0 : 1;
  const across: Level = axis === 0 ? 1 : 0;
  const own = boxOfBlock(block);
  const beside = joints.map((joint) => boxRound([joint])).filter(({ min, max }) => min[across] < block.at[across] && max[across] > block.at[across]);
  const pairs = beside.flatMap(({ min, max }) => [min[axis], max[axis]]).flatMap((from) => [own.min[axis], own.max[axis]].map((to) => ({ from, to, far: Math.round(Math.abs(from - to)) })));
  const nearest = pairs.toSorted((a, b) => a.far - b.far)[0];
  return nearest === undefined || nearest.far <= AT_JOINT ? null : { block, axis, ...nearest };
}

/** Beside the block, on the outside of the work. */
function lengthMark({ block, axis, from, to, far }: PlaceAlong, box: Box): Mark {
  const across: Level = axis === 0 ? 1 : 0;
  const own = boxOfBlock(block);
  const side = block.at[across] < middleOf(box)[across] ? -1 : 1;
  const edge = (along: number): Vec3 => plus(level(axis, along, (side < 0 ? own.min : own.max)[across]), [0, 0, own.max[2]]);
  return { mark: 'length', from: edge(from), to: edge(to), away: times(level(axis, 0, side), OFF * Math.max(box.max[0] - box.min[0], box.max[1] - box.min[1])), told: tell.mm(far) };
}
