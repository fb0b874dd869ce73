import { moved, plus, times, type PartKind, type Shape, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { tell } from '../told.ts';
import type { Mark, SceneBody } from '../types.ts';
import { boxRound, type Box } from './extent.ts';
import type { StageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';

/** What no work rests on. */
const FASTENERS: ReadonlySet<PartKind> = new Set<PartKind>(['joint-pin', 'wing-nut', 'panel-pin', 'cable']);

/** A block that holds work, mm. */
const BLOCK = { along: 70, across: 60, high: 90 };
/** Work that is no higher over the bench than this stands on it, and is held from both sides, mm. */
const STANDS = 4;

/** The blocks that hold what a step has propped: under each end of what hangs over the bench, on both sides of what stands on edge. */
export const propBodies = (hand: StageHand, step: Step): readonly SceneBody[] =>
  blocksOf(hand, step).map(({ shape, at }, index) => hand.prop({ tool: `block-${index + 1}` }, shape, moved(at), 'present'));

/** The same blocks on their way out, each with the arrow of its way. */
export const propsLeaving = (hand: StageHand, step: Step): { readonly bodies: readonly SceneBody[]; readonly marks: readonly Mark[] } => {
  const blocks = blocksOf(hand, step);
  const off = ({ at, out }: Block, far: number): Vec3 => plus(at, times(out, far));
  const middle = (block: Block, far: number): Vec3 => plus(off(block, far), [0, 0, block.shape.thickness / 2]);
  return {
    bodies: blocks.map((block, index) => hand.prop({ tool: `block-${index + 1}` }, block.shape, moved(off(block, OUT.drawn)), 'new')),
    marks: [
      ...blocks.map((block): Mark => ({ mark: 'arrow', path: [middle(block, OUT.drawn + OUT.half), middle(block, OUT.drawn + OUT.half + OUT.arrow)] })),
      ...nearestFirst(blocks).slice(0, 1).map((block): Mark => ({ mark: 'label', at: middle(block, OUT.drawn), told: tell.times(blocks.length) })),
    ],
  };
};

/** How far out a block is drawn that leaves, and the arrow beyond it, mm. */
const OUT = { drawn: 90, half: 50, arrow: 120 } as const;

/** How many blocks there are of each height, mm, the lowest first. */
export function propCounts(hand: StageHand, step: Step): readonly PropCount[] {
  const heights = blocksOf(hand, step).map(({ shape }) => Math.round(shape.thickness));
  return [...new Set(heights)].sort((a, b) => a - b).map((high) => ({ high, count: heights.filter((each) => each === high).length }));
}

export interface PropCount {
  readonly high: number;
  readonly count: number;
}

/** How many blocks there are, and how high: told at the one nearest to the eye, its height on the side of it that faces left. */
export function propMarks(hand: StageHand, step: Step): readonly Mark[] {
  const blocks = blocksOf(hand, step);
  const [nearest] = nearestFirst(blocks);
  if (nearest === undefined) return [];
  const { at: [x, y, z], shape: { width, height, thickness } } = nearest;
  const foot: Vec3 = [x - width / 2, y - height / 2, z];
  return [
    { mark: 'length', from: foot, to: [foot[0], foot[1], z + thickness], away: [-LEFT, -LEFT / 2, 0], told: tell.mm(Math.round(thickness)) },
    { mark: 'label', at: [x, y - height / 2, z + thickness / 2], told: tell.times(blocks.length) },
  ];
}

function nearestFirst(blocks: readonly Block[]): readonly Block[] {
  const [ex, ey] = STANDARD_VIEW.towardsEye;
  return blocks.toSorted((a, b) => (b.at[0] - a.at[0]) * ex + (b.at[1] - a.at[1]) * ey);
}

/** How far off a block its height is told, mm. */
const LEFT = 45;

function blocksOf(hand: StageHand, step: Step): readonly Block[] {
  if (step.props.length === 0) return [];
  const moving = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []));
  const there = [...new Set([...step.present, ...moving, ...step.props.flat()])].filter((id) => !FASTENERS.has(hand.part(id).kind)).map((id) => hand.body(id, 'present'));
  const bench = boxRound(there).min[2];
  return step.props.flatMap((parts): readonly Block[] => {
    const bodies = there.filter(({ id }) => parts.includes(id));
    const box = boxRound(bodies);
    return box.min[2] - bench > STANDS ? under(lowerEdge(bodies, box.min[2] + LOW), bench) : beside(box, bench);
  });
}

/** What is no higher over the lowest place than this rests on a block, mm. */
const LOW = 30;

/** The box round what is lower than a height. */
function lowerEdge(bodies: readonly SceneBody[], height: number): Box {
  const low = bodies.map(({ mesh, pose }) => boxRound([{ mesh, pose }])).filter(({ min }) => min[2] < height);
  const all = (pick: (...values: number[]) => number, side: keyof Box): Vec3 => [0, 1, 2].map((axis) => pick(...low.map((box) => box[side][axis] ?? 0))) as unknown as Vec3;
  return { min: all(Math.min, 'min'), max: all(Math.max, 'max') };
}

interface Block {
  readonly shape: Extract<Shape, { form: 'plate' }>;
  readonly at: Vec3;
  /** The level way on which it comes out. */
  readonly out: Vec3;
}

const block = (width: number, height: number, thickness: number, at: Vec3, out: Vec3): Block => ({ shape: { form: 'plate', width, height, thickness, holes: [] }, at, out });

/** At both ends, where no sleeve comes, or in the middle of what is short. */
const ends = (from: number, to: number): readonly number[] => (to - from > 4 * BLOCK.along ? [from + BLOCK.along / 2, to - BLOCK.along / 2] : [(from + to) / 2]);

const under = ({ min, max }: Box, bench: number): readonly Block[] =>
  ends(min[0], max[0]).map((x, index, all) => block(BLOCK.along, BLOCK.across, min[2] - bench, [x, (min[1] + max[1]) / 2, bench], all.length === 1 ? [0, -1, 0] : [index === 0 ? -1 : 1, 0, 0]));

/** Across its thinner way. */
function beside({ min, max }: Box, bench: number): readonly Block[] {
  const isThinX = max[0] - min[0] < max[1] - min[1];
  const [thin, long] = isThinX ? [0, 1] as const : [1, 0] as const;
  return ends(min[long], max[long]).flatMap((along) => ([-1, 1] as const).map((side) => {
    const across = (side < 0 ? min : max)[thin] + (side * BLOCK.across) / 2;
    return isThinX
      ? block(BLOCK.across, BLOCK.along, BLOCK.high, [across, along, bench], [side, 0, 0])
      : block(BLOCK.along, BLOCK.across, BLOCK.high, [along, across, bench], [0, side, 0]);
  }));
}
