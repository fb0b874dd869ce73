import { dot, lengthOf, plus, times, unit, type Model, type Solids, type Vec3 } from '../model/index.ts';
import type { Plan, Step } from '../plan/index.ts';
import { boxOfBlock } from './kit/blocks.ts';
import { turnedBy } from './kit/directions.ts';
import { boxRound, type Box } from './kit/extent.ts';
import type { Slide } from './kit/on-the-way.ts';
import { blockBody, halfOut, namedBlocks, nearestFirst, outOf, propCounts, topOf, type NamedBlock, type PropCount } from './kit/props.ts';
import { stageHand, type StageHand } from './kit/stage.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import { tell } from './told.ts';
import type { Look, Mark, Scene, SceneBody } from './types.ts';

/**
 * Before a step that is propped: its blocks by themselves, how many, how high and how far apart; then what is laid down on
 * them, or how they come to work that lies there. None where nothing is propped, or the same as in the step before.
 */
export function proppedScenes(model: Model, plan: Plan, step: Step, solids: Solids): readonly Scene[] {
  if (!doBlocksCome(plan, step)) return [];
  const hand = stageHand(model, atItsBeginning(step), solids);
  const blocks = namedBlocks(hand, step);
  const before = stepBefore(plan, step);
  const stood = before === undefined || before.standing.name !== step.standing.name ? [] : before.props.flat();
  const isThere = ({ holds }: NamedBlock): boolean => holds.some((id) => stood.includes(id));
  return [
    { id: `blocks:${step.number}`, bodies: blocks.map((block) => blockBody(hand, block, isThere(block) ? 'present' : 'new')), marks: aloneMarks(blocks), view: STANDARD_VIEW },
    comingScene(hand, step, blocks, isThere),
  ];
}

/** In a step: the first of what is pushed over propped bars has come to the blocks that are in its way, and these leave; null where there are none. */
export function freedScene(model: Model, step: Step, solids: Solids): Scene | null {
  const hand = stageHand(model, step, solids);
  const blocks = namedBlocks(hand, step);
  const early = blocks.filter(({ leavesEarly }) => leavesEarly);
  const slides = step.motions.filter((motion): motion is Slide => motion.kind === 'slide');
  const [first] = slides.toSorted((a, b) => lengthOf(b.by) - lengthOf(a.by));
  if (first === undefined || early.length === 0) return null;
  const way = unit(turnedBy(step.standing.pose, first.by));
  const work = boxRound(first.parts.map((id) => hand.body(id, 'new')));
  const stop = Math.min(...early.map((block) => -reachOf(boxOfBlock(block), times(way, -1)))) - TOUCH;
  const back = times(way, stop - reachOf(work, way));
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  const bodies = [
    ...step.props.flat().map((id) => hand.body(id, fresh.includes(id) ? 'new' : 'present')), ...first.parts.map((id) => hand.body(id, 'new', back)),
    ...blocks.filter(({ leavesEarly }) => !leavesEarly).map((block) => blockBody(hand, block, 'present')),
  ];
  return leavingScene(`freed:${step.number}`, hand, bodies, early);
}

/** Before a step: the whole work as the step before has left it, and what that had propped it on its way out; null where that stood on no blocks, or stands on them still. */
export function unproppedScene(model: Model, plan: Plan, step: Step, solids: Solids): Scene | null {
  const before = stepBefore(plan, step);
  if (before === undefined || before.props.length === 0 || isPropped(before, step)) return null;
  const hand = stageHand(model, before, solids);
  return leavingScene(`unpropped:${step.number}`, hand, shownIn(before).map((id) => hand.body(id, 'present')), namedBlocks(hand, before).filter(({ leavesEarly }) => !leavesEarly));
}

/** How many blocks to fetch for a step, of each height, mm; none where it needs none or they are there. */
export const blocksFetched = (model: Model, plan: Plan, step: Step, solids: Solids): readonly PropCount[] =>
  (doBlocksCome(plan, step) ? propCounts(stageHand(model, step, solids), step) : []);

/** How many blocks to have at hand for all of a plan, of each height, mm, the lowest first: as many as any step needs. */
export function allBlocks(model: Model, plan: Plan, solids: Solids): readonly PropCount[] {
  const needed = plan.steps.filter((step) => step.props.length > 0).flatMap((step) => propCounts(stageHand(model, step, solids), step));
  return [...new Set(needed.map(({ high }) => high))].sort((a, b) => a - b).map((high) => ({ high, count: Math.max(...needed.filter((each) => each.high === high).map(({ count }) => count)) }));
}

/** A block is drawn so far off its place, and the arrow of its way is so long, as shares of how wide the whole picture is; and the white between them, mm. */
const OFF = 0.05;
const ARROW = 0.14;
const WHITE = 12;
/** Bars are drawn so far over the blocks that they are laid on, as a share of their length. */
const OVER = 0.12;
/** Between what comes and the block in its way, mm. */
const TOUCH = 10;
/** How far off a block its height is told, and off its top how far it stands from another, mm. */
const LEFT = 45;
const AWAY = 110;
/** Of no more blocks than these the distances are told; more stand as their work shows. */
const FEW = 4;
/** What is nearer to the work's end than this stands at it, mm. */
const AT_END = 5;

/** How far a box reaches in a direction. */
const reachOf = ({ min, max }: Box, way: Vec3): number => dot(way, [way[0] > 0 ? max[0] : min[0], way[1] > 0 ? max[1] : min[1], way[2] > 0 ? max[2] : min[2]]);

const extentOf = (bodies: readonly SceneBody[]): number => {
  const { min, max } = boxRound(bodies);
  return lengthOf(plus(max, times(min, -1)));
};

/** The height of the nearest block, how many there are, and from the middle of its top to those beside it. */
function aloneMarks(blocks: readonly NamedBlock[]): readonly Mark[] {
  const [nearest] = nearestFirst(blocks);
  if (nearest === undefined) return [];
  const others = blocks.length > FEW || nearest.comes !== 'before' ? [] : blocks.filter((block) => block !== nearest);
  const besideAlong = (axis: 0 | 1): readonly Mark[] => others.filter((other) => Math.abs(other.at[1 - axis as 0 | 1] - nearest.at[1 - axis as 0 | 1]) < 1).slice(0, 1).map((other): Mark => ({
    mark: 'length', from: topOf(nearest), to: topOf(other), away: axis === 0 ? [0, -AWAY, 0] : [AWAY, 0, 0], told: tell.mm(Math.abs(other.at[axis] - nearest.at[axis])), dots: true,
  }));
  return [...heightMarks(nearest), { mark: 'label', at: outOf(nearest, 0), told: tell.times(blocks.length) }, ...besideAlong(0), ...besideAlong(1)];
}

/** The height of a block, on the side of it that faces left. */
function heightMarks({ at: [x, y, z], shape: { width, height, thickness } }: NamedBlock): readonly Mark[] {
  const foot: Vec3 = [x - width / 2, y - height / 2, z];
  return [{ mark: 'length', from: foot, to: [foot[0], foot[1], z + thickness], away: [-LEFT, -LEFT / 2, 0], told: tell.mm(Math.round(thickness)) }];
}

/** Work on its way down to its blocks, or blocks on their way to work that lies there. */
function comingScene(hand: StageHand, step: Step, blocks: readonly NamedBlock[], isThere: (block: NamedBlock) => boolean): Scene {
  const id = `propped:${step.number}`;
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  if (blocks.every(({ comes }) => comes === 'before')) {
    const held = [...new Set(blocks.flatMap(({ holds }) => holds))];
    const lift = OVER * extentOf(held.map((each) => hand.body(each, 'new')));
    const arrows = held.map((each): Mark => {
      const { min, max } = boxRound([hand.body(each, 'new')]);
      const at: Vec3 = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, min[2]];
      return { mark: 'arrow', path: [plus(at, [0, 0, lift - WHITE]), at] };
    });
    return {
      id, view: STANDARD_VIEW, marks: [...arrows, ...fromEnds(hand, blocks)],
      bodies: [...held.map((each) => hand.body(each, fresh.includes(each) ? 'new' : 'present', [0, 0, lift])), ...blocks.map((block) => blockBody(hand, block, 'present'))],
    };
  }
  const moving = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []));
  const bodies = [...new Set([...step.present, ...step.props.flat()])].filter((each) => !moving.includes(each)).map((each) => hand.body(each, 'present'));
  return offScene(id, hand, [...bodies, ...blocks.filter(isThere).map((block) => blockBody(hand, block, 'present'))], blocks.filter((block) => !isThere(block)), 'in');
}

/** How far in from a bar's end the blocks stand that stand at no end of it, told at the nearest. */
function fromEnds(hand: StageHand, blocks: readonly NamedBlock[]): readonly Mark[] {
  const [nearest] = nearestFirst(blocks.filter(({ leavesEarly }) => leavesEarly));
  if (nearest === undefined) return [];
  const [bar, own] = [boxRound(nearest.holds.map((id) => hand.body(id, 'present'))), boxOfBlock(nearest)];
  const axis = bar.max[0] - bar.min[0] > bar.max[1] - bar.min[1] ? 0 : 1;
  const [low, high] = [own.min[axis] - bar.min[axis], bar.max[axis] - own.max[axis]];
  const [from, to] = low < high ? [bar.min[axis], own.min[axis]] : [own.max[axis], bar.max[axis]];
  const at = (along: number): Vec3 => (axis === 0 ? [along, own.min[1], own.min[2]] : [own.max[0], along, own.min[2]]);
  return to - from < AT_END ? [] : [{ mark: 'length', from: at(from), to: at(to), away: axis === 0 ? [0, -LEFT, 0] : [LEFT, 0, 0], told: tell.mm(Math.round(to - from)) }];
}

const leavingScene = (id: string, hand: StageHand, bodies: readonly SceneBody[], blocks: readonly NamedBlock[]): Scene => offScene(id, hand, bodies, blocks, 'out');

/** Work that stays, and each block off its place with the arrow of its way. */
function offScene(id: string, hand: StageHand, bodies: readonly SceneBody[], blocks: readonly NamedBlock[], goes: 'in' | 'out'): Scene {
  const extent = extentOf(bodies);
  const farOff = Math.max(2 * WHITE, OFF * extent);
  // What is lifted out is drawn clear of the work that it stood between.
  const offOf = ({ out, shape }: NamedBlock): number => farOff + out[2] * shape.thickness;
  const arrow = ARROW * extent;
  const arrows = blocks.map((block): Mark => {
    const begins = offOf(block) + halfOut(block) + WHITE;
    const path = [outOf(block, begins), outOf(block, begins + arrow)];
    return { mark: 'arrow', path: goes === 'out' ? path : path.toReversed() };
  });
  const [nearest] = nearestFirst(blocks);
  const count: readonly Mark[] = nearest === undefined ? [] : [{ mark: 'label', at: outOf(nearest, offOf(nearest)), told: tell.times(blocks.length) }];
  return { id, bodies: [...bodies, ...blocks.map((block) => blockBody(hand, block, 'new' satisfies Look, times(block.out, offOf(block))))], marks: [...arrows, ...count], view: STANDARD_VIEW };
}

/** A step with flaps as they are before it. */
const atItsBeginning = (step: Step): Step => ({
  ...step,
  folded: step.folded.map((flap) => {
    const fold = step.motions.find((motion) => motion.kind === 'fold' && motion.panel === flap.panel && motion.flap === flap.flap);
    return fold?.kind === 'fold' ? { ...flap, stage: fold.from } : flap;
  }),
});

/** All that is there when a step is done. */
const shownIn = ({ present, newParts, motions }: Step): readonly string[] =>
  [...new Set([...present, ...newParts.flatMap(({ ids }) => ids), ...motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []))])];

function doBlocksCome(plan: Plan, step: Step): boolean {
  const before = stepBefore(plan, step);
  return step.props.length > 0 && !(before !== undefined && isPropped(step, before));
}

const stepBefore = ({ steps }: Plan, { number }: Step): Step | undefined => steps.filter((each) => each.number < number).at(-1);

/** Whether all that one step has propped lies the same way on its blocks in the other. */
const isPropped = (one: Step, other: Step): boolean => one.standing.name === other.standing.name
  && one.props.every((parts) => other.props.some((others) => parts.some((id) => others.includes(id))));
