import { dot, lengthOf, plus, times, unit, type Model, type Pose, type Solids, type Vec3 } from '../model/index.ts';
import { afterTurn, isSetOnItsFeet, isTurn, type Plan, type Step } from '../plan/index.ts';
import { blocksOf, boxOfBlock, footingBlocks, type Block } from './kit/blocks.ts';
import { turnedBy } from './kit/directions.ts';
import { boxRound, middleOf, reachOf } from './kit/extent.ts';
import { isPropHidden } from './kit/hidden-by.ts';
import type { Slide } from './kit/on-the-way.ts';
import { fromAboveScene } from './kit/from-above.ts';
import { levelScene } from './kit/level.ts';
import { liftingHands } from './kit/lifting-hands.ts';
import { partsShown } from './kit/parts-shown.ts';
import { blockBody, countedByKind, halfOut, isOnBlocks, isSameKind, namedBlocks, nearestFirst, outOf, propCounts, topOf, type NamedBlock, type PropCount } from './kit/props.ts';
import { stageHand, type StageHand } from './kit/stage.ts';
import { turnedBodies, turnOf } from './kit/turn.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import { laidAside, type Tip } from './laid-aside.ts';
import { tell } from './told.ts';
import type { Look, Mark, Scene, SceneBody } from './types.ts';

/**
 * Before a step that is propped or lies on blocks: what is laid down on its blocks, or how they come to work that lies there; then
 * the work on them, seen level: how many, how high, and where they stand. None where no blocks come, or where work is set down on them as it is turned.
 */
export function proppedScenes(model: Model, plan: Plan, step: Step, solids: Solids): readonly Scene[] {
  const given = { model, plan, solids };
  const coming = comingTo(given, step);
  if (coming.length === 0 || isTurn(step)) return [];
  const hand = stageHand(model, atItsBeginning(step), solids);
  const blocks = namedBlocks(hand, step);
  const isThere = (block: NamedBlock): boolean => !coming.some((each) => isSame(each, block));
  return [
    comingScene(hand, step, blocks, isThere),
    levelScene(`level:${step.number}`, hand, heldOrThere(step, blocks), blocks, isThere, step.newParts.flatMap(({ ids }) => ids)),
  ];
}

/**
 * In a step: the first of what is pushed over propped bars has come to the blocks that are in its way, and these leave; then the
 * second at the same place, while the first, a little further on, carries the ends of the bars. None where no blocks are in the way.
 */
export function freedScenes(model: Model, step: Step, solids: Solids): readonly Scene[] {
  const hand = stageHand(model, step, solids);
  const blocks = namedBlocks(hand, step);
  const early = blocks.filter(({ leavesEarly }) => leavesEarly);
  const slides = step.motions.filter((motion): motion is Slide => motion.kind === 'slide');
  const [first, second] = slides.toSorted((a, b) => lengthOf(b.by) - lengthOf(a.by));
  if (first === undefined || early.length === 0) return [];
  const way = unit(turnedBy(step.standing.pose, first.by));
  const stop = Math.min(...early.map((block) => -reachOf(boxOfBlock(block), times(way, -1)))) - TOUCH;
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  const stays = [
    ...step.props.flat().map((id) => hand.body(id, fresh.includes(id) ? 'new' : 'present')),
    ...blocks.filter(({ leavesEarly }) => !leavesEarly).map((block) => blockBody(hand, block, 'present')),
  ];
  const atBlocks = ({ parts }: Slide, look: Look = 'new', further = 0): readonly SceneBody[] => {
    const box = boxRound(parts.map((id) => hand.body(id, 'new')));
    const back = times(way, stop - reachOf(box, way) + further * (reachOf(box, way) + reachOf(box, times(way, -1))));
    return parts.map((id) => hand.body(id, look, back));
  };
  const leaving = leavingScene(`freed:${step.number}`, hand, [...stays, ...atBlocks(first)], early);
  const freed: Scene = { ...leaving, marks: [...leaving.marks, wayOf(leaving.bodies, atBlocks(first), way)] };
  return second === undefined ? [freed] : [freed, followingScene(`following:${step.number}`, [...stays, ...atBlocks(first, 'present', FURTHER)], atBlocks(second), way)];
}

/** What comes after the first, with the arrow of its way. */
function followingScene(id: string, bodies: readonly SceneBody[], coming: readonly SceneBody[], way: Vec3): Scene {
  const all = [...bodies, ...coming];
  return { id, view: STANDARD_VIEW, bodies: all, marks: [wayOf(all, coming, way)] };
}

/** The arrow of what comes, ahead of it. */
function wayOf(all: readonly SceneBody[], coming: readonly SceneBody[], way: Vec3): Mark {
  const box = boxRound(coming);
  const middle = middleOf(box);
  const begins = plus(middle, times(way, reachOf(box, way) - dot(middle, way) + WHITE));
  return { mark: 'arrow', path: [begins, plus(begins, times(way, ARROW * extentOf(all)))] };
}

/** Before a step: the whole work as the step before has left it, and the blocks of that on their way out which the step does without; laid down where the step is on other work and nobody holds it any more; null where there are none. */
export function unproppedScene(model: Model, plan: Plan, step: Step, solids: Solids): Scene | null {
  const before = stepBefore(plan, step);
  if (before === undefined || isTurn(before)) return null;
  const tip = laidAside(model, before, step);
  if (tip !== null) return asideScene({ model, plan, solids }, before, step, tip);
  const isStoodUp = isSetOnItsFeet(step);
  const stay = isStoodUp ? [] : blocksIn({ model, plan, solids }, step);
  const hand = stageHand(model, before, solids);
  const [kept, leave] = parted(namedBlocks(hand, before).filter(({ leavesEarly }) => !leavesEarly), (block) => isSameLying(before, step) && stay.some((each) => isSame(each, block)));
  if (leave.length === 0) return null;
  const work = partsShown(before).map((id) => hand.body(id, 'present'));
  const leaving = leavingScene(`unpropped:${step.number}`, hand, [...work, ...kept.map((block) => blockBody(hand, block, 'present'))], leave);
  return isStoodUp ? { ...leaving, marks: [...leaving.marks, ...liftingHands({ model, stage: hand, step: before, present: step.present, scene: leaving }, null)] } : leaving;
}

/** Work tipped off its blocks to lie by itself: pale as it stood on them, full as it lies. */
function asideScene({ model, solids }: Given, before: Step, { number }: Step, { axis, angle }: Tip): Scene {
  const hand = stageHand(model, before, solids);
  const stood = partsShown(before).map((id) => hand.body(id, 'present'));
  const turn = turnOf(axis, angle, stood);
  const bodies = turnedBodies(stood, turn, '#after');
  const blocks = namedBlocks(hand, before).map((block) => blockBody(hand, block, 'pale'));
  const scene: Scene = { id: `unpropped:${number}`, bodies: [...bodies, ...blocks], marks: turn.marks, view: STANDARD_VIEW };
  const hands = liftingHands({ model, stage: hand, step: before, present: partsShown(before), scene }, null);
  return { ...scene, marks: [...scene.marks, ...hands.map((each): Mark => ({ ...each, person: 1 }))] };
}

/** Work that a step has turned and set down on blocks, seen level: where each stands; null where it is set down on none. */
export function setDownScene(model: Model, plan: Plan, step: Step, solids: Solids): Scene | null {
  const next = plan.steps.find(({ number }) => number > step.number);
  if (!isTurn(step) || step.footing.after.length === 0 || next === undefined) return null;
  const hand = stageHand(model, atItsBeginning(next), solids);
  const set = comingTo({ model, plan, solids }, step);
  const blocks = namedBlocks(hand, next).filter((block) => set.some((each) => isSame(each, block)));
  return blocks.length === 0 ? null : levelScene(`set-down:${step.number}`, hand, step.present, blocks, () => false, []);
}

/** Where the blocks stand that the whole work comes to lie on in a step, seen from above; null where none come. */
export function blocksFromAbove(model: Model, plan: Plan, step: Step, solids: Solids): Scene | null {
  const lying = isTurn(step) ? plan.steps.find(({ number }) => number > step.number) : step;
  const coming = comingTo({ model, plan, solids }, step).filter(({ isFooting }) => isFooting);
  if (lying === undefined || coming.length === 0) return null;
  const hand = stageHand(model, atItsBeginning(lying), solids);
  const blocks = namedBlocks(hand, lying).filter((block) => coming.some((each) => isSame(each, block)));
  return blocks.length === 0 ? null : fromAboveScene(`from-above:${step.number}`, hand, isTurn(step) ? step.present : heldOrThere(lying, blocks), blocks);
}

/** Whether the blocks of a step are pushed to work that lies or stands there, after it has been turned. */
export const doBlocksComeToWork = (model: Model, plan: Plan, step: Step, solids: Solids): boolean =>
  !isTurn(step) && comingTo({ model, plan, solids }, step).some(({ comes }) => comes === 'to-work');

/** How many blocks to fetch for a step, of each kind; none where it needs none or they are there. */
export function blocksFetched(model: Model, plan: Plan, step: Step, solids: Solids): readonly PropCount[] {
  const coming = propCounts(comingTo({ model, plan, solids }, step));
  if (!isTurn(step)) return coming;
  // Those that the work was turned over from it is set down on again.
  const had = propCounts(blocksIn({ model, plan, solids }, step));
  return coming.flatMap((kind) => {
    const count = kind.count - (had.find((each) => isSameKind(each, kind))?.count ?? 0);
    return count > 0 ? [{ ...kind, count }] : [];
  });
}

/** Of those that work is set down on when it has been turned, and more of a kind are fetched: how many it was turned over from, of each kind. */
export function blocksThere(model: Model, plan: Plan, step: Step, solids: Solids): readonly PropCount[] {
  if (!isTurn(step)) return [];
  const fetched = blocksFetched(model, plan, step, solids);
  return propCounts(footingBlocks(step.footing.after, afterTurnOf(step))).flatMap((kind) => {
    const more = fetched.find((each) => isSameKind(each, kind));
    return more === undefined || more.count === kind.count ? [] : [{ ...kind, count: kind.count - more.count }];
  });
}

/** How many blocks to have at hand for all of a plan, of each kind, the lowest first: as many as any step needs. */
export function allBlocks(model: Model, plan: Plan, solids: Solids): readonly PropCount[] {
  const needed = plan.steps.filter(isOnBlocks).flatMap((step) => propCounts(blocksOf(stageHand(model, step, solids), step)));
  return countedByKind(needed, (counts) => Math.max(...counts));
}

/** A block is drawn so far off its place, and the arrow of its way is so long, as shares of how wide the whole picture is; and the white between them, mm. */
const OFF = 0.05;
const ARROW = 0.14;
const WHITE = 12;
/** Bars are drawn so far over the blocks that they are laid on, as a share of their length. */
const OVER = 0.12;
/** Between what comes and the block in its way, mm. */
const TOUCH = 10;
/** How much further the first of what is pushed over bars is than the second that follows, in its own widths: it carries the bars' ends until that does. */
const FURTHER = 2.2;
/** How far off a block's top it is told how far it stands from another, mm. */
const AWAY = 110;

const extentOf = (bodies: readonly SceneBody[]): number => {
  const { min, max } = boxRound(bodies);
  return lengthOf(plus(max, times(min, -1)));
};

/** What stands on blocks by itself; where these come to work, all that is there. */
function heldOrThere(step: Step, blocks: readonly NamedBlock[]): readonly string[] {
  if (blocks.every(({ comes }) => comes === 'before')) return [...new Set(blocks.flatMap(({ holds }) => holds))];
  const moving = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []));
  return [...new Set([...step.present, ...step.props.flat()])].filter((each) => !moving.includes(each));
}

/** Work on its way down to its blocks, or blocks on their way to work that lies there. */
function comingScene(hand: StageHand, step: Step, blocks: readonly NamedBlock[], isThere: (block: NamedBlock) => boolean): Scene {
  const id = `propped:${step.number}`;
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  if (blocks.every(({ comes }) => comes === 'before')) {
    const held = heldOrThere(step, blocks);
    const lift = OVER * extentOf(held.map((each) => hand.body(each, 'new')));
    const arrows = held.map((each): Mark => {
      const { min, max } = boxRound([hand.body(each, 'new')]);
      const at: Vec3 = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, min[2]];
      return { mark: 'arrow', path: [plus(at, [0, 0, lift - WHITE]), at] };
    });
    return {
      id, view: STANDARD_VIEW, marks: [...arrows, ...apart(blocks)],
      bodies: [...held.map((each) => hand.body(each, fresh.includes(each) ? 'new' : 'present', [0, 0, lift])), ...blocks.map((block) => blockBody(hand, block, 'present'))],
    };
  }
  const bodies = heldOrThere(step, blocks).map((each) => hand.body(each, 'present'));
  return offScene(id, hand, [...bodies, ...blocks.filter(isThere).map((block) => blockBody(hand, block, 'present'))], blocks.filter((block) => !isThere(block)), 'in');
}

/** From the middle of the top of the nearest block to that under another bar. */
function apart(blocks: readonly NamedBlock[]): readonly Mark[] {
  const [nearest] = nearestFirst(blocks);
  const other = blocks.find((block) => block !== nearest && block.holds.every((id) => nearest?.holds.includes(id) === false) && ([0, 1] as const).some((axis) => Math.abs(block.at[axis] - (nearest?.at[axis] ?? 0)) < 1));
  if (nearest === undefined || other === undefined) return [];
  const axis = Math.abs(other.at[0] - nearest.at[0]) < 1 ? 1 : 0;
  return [{ mark: 'length', from: topOf(nearest), to: topOf(other), away: axis === 0 ? [0, -AWAY, 0] : [AWAY, 0, 0], told: tell.mm(Math.round(Math.abs(other.at[axis] - nearest.at[axis]) * 10) / 10), dots: true }];
}

/** So many places are tried over the extent of the work. */
const TRIED = 20;

const leavingScene = (id: string, hand: StageHand, bodies: readonly SceneBody[], blocks: readonly NamedBlock[]): Scene => offScene(id, hand, bodies, blocks, 'out');

/** Work that stays, and each block off its place with the arrow of its way. */
function offScene(id: string, hand: StageHand, bodies: readonly SceneBody[], blocks: readonly NamedBlock[], goes: 'in' | 'out'): Scene {
  const extent = extentOf(bodies);
  const farOff = Math.max(2 * WHITE, OFF * extent);
  // What is lifted out is drawn clear of the work that it stood between.
  // What stands behind the work is drawn so far off that it is seen beside it, where it can be.
  const offs = new Map(blocks.map((block): [NamedBlock, number] => {
    const least = farOff + block.out[2] * block.shape.thickness;
    const tried = Array.from({ length: TRIED }, (_, index) => least + (index * extent) / TRIED);
    return [block, tried.find((off) => !isPropHidden(blockBody(hand, block, 'new', times(block.out, off)), bodies, STANDARD_VIEW)) ?? least];
  }));
  const offOf = (block: NamedBlock): number => offs.get(block) ?? farOff;
  const arrow = ARROW * extent;
  const arrows = blocks.map((block): Mark => {
    const begins = offOf(block) + halfOut(block) + WHITE;
    const path = [outOf(block, begins), outOf(block, begins + arrow)];
    return { mark: 'arrow', path: goes === 'out' ? path : path.toReversed() };
  });
  const counts = byKind(blocks).map((own): Mark => ({ mark: 'label', at: outOf(own[0], offOf(own[0])), told: tell.times(own.length) }));
  const limits = blocks.flatMap((block): readonly Mark[] => (block.most === null || goes === 'out' ? [] : [{ mark: 'label', at: outOf(block, offOf(block)), told: tell.atMost(block.most) }]));
  return { id, bodies: [...bodies, ...blocks.map((block) => blockBody(hand, block, 'new' satisfies Look, times(block.out, offOf(block))))], marks: [...arrows, ...counts, ...limits], view: STANDARD_VIEW };
}

/** Blocks of each kind, the nearest to the eye first. */
const byKind = (blocks: readonly NamedBlock[]): readonly (readonly [NamedBlock, ...NamedBlock[]])[] => nearestFirst(blocks).flatMap((block, index, all) => {
  const isOwn = (other: NamedBlock): boolean => isSameKind(kindOf(other), kindOf(block));
  return all.slice(0, index).some(isOwn) ? [] : [[block, ...all.slice(index + 1).filter(isOwn)] as const];
});

const kindOf = ({ shape, most }: Block): Pick<PropCount, 'high' | 'most'> => ({ high: Math.round(shape.thickness), most });

/** A step with flaps as they are before it. */
const atItsBeginning = (step: Step): Step => ({
  ...step,
  folded: step.folded.map((flap) => {
    const fold = step.motions.find((motion) => motion.kind === 'fold' && motion.panel === flap.panel && motion.flap === flap.flap);
    return fold?.kind === 'fold' ? { ...flap, stage: fold.from } : flap;
  }),
});

interface Given {
  readonly model: Model;
  readonly plan: Plan;
  readonly solids: Solids;
}

/** The blocks of a step, as its work lies when it begins. */
const blocksIn = ({ model, solids }: Given, step: Step): readonly Block[] => blocksOf(stageHand(model, step, solids), step);

/** The blocks that come in a step, before its work is done: those that are not there; where it turns the work, those that this is set down on. */
function comingTo(given: Given, step: Step): readonly Block[] {
  if (isTurn(step)) return footingBlocks(step.footing.after, afterTurnOf(step));
  const before = stepBefore(given.plan, step);
  const there = before === undefined || !isSameLying(before, step) ? [] : isTurn(before) ? footingBlocks(before.footing.after, step.standing.pose) : blocksIn(given, before).filter(({ leavesEarly }) => !leavesEarly);
  return blocksIn(given, step).filter((block) => !there.some((each) => isSame(each, block)));
}

/** How the work lies when a step has turned it. */
const afterTurnOf = ({ motions, standing }: Step): Pose => afterTurn(motions.find((motion) => motion.kind === 'turn') ?? null, standing.pose);

const stepBefore = ({ steps }: Plan, { number }: Step): Step | undefined => steps.filter((each) => each.number < number).at(-1);
const isSameLying = (one: Step, other: Step): boolean => one.standing.name === other.standing.name;

/** What is nearer to a place than this stands at it, mm. */
const AT = 1;

/** Whether two blocks are one: under the same of what is propped, or else in the same place. */
const isSame = (one: Block, other: Block): boolean => (one.isFooting || other.isFooting
  ? lengthOf(plus(topOf(one), times(topOf(other), -1))) < AT && Math.abs(one.shape.width - other.shape.width) < AT
  : one.holds.some((id) => other.holds.includes(id)));

const parted = <Some>(all: readonly Some[], isFirst: (one: Some) => boolean): readonly [readonly Some[], readonly Some[]] => [all.filter(isFirst), all.filter((one) => !isFirst(one))];
