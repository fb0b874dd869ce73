import { chained, dot, lengthOf, placed, plus, times, type Connection, type Pose, type Shape, type Vec3 } from '../../model/index.ts';
import { FASTENERS, lowestPeg, PEGS_CLEAR, reachingTo, STANDS, type Footing, type Step } from '../../plan/index.ts';
import type { SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import { boxRound, middleOf, type Box } from './extent.ts';
import type { Slide } from './on-the-way.ts';
import { restsOn } from './resting.ts';
import type { StageHand } from './stage.ts';

/** A block that holds work. */
export interface Block {
  readonly shape: Extract<Shape, { form: 'plate' }>;
  /** The middle of its foot. */
  readonly at: Vec3;
  /** The level way on which it comes out. */
  readonly out: Vec3;
  /** Whether work is laid down on it, or it is pushed to the work that lies or stands there. */
  readonly comes: 'before' | 'to-work';
  /** It leaves in the step itself, when the first part that slides over the work comes to it. */
  readonly leavesEarly: boolean;
  /** Along which level axis (0 for x, 1 for y) one looks to see how it holds its work. */
  readonly seenAlong: Level;
  /** What it holds. */
  readonly holds: readonly string[];
  /** It may be no thicker than this, where there is less room than for a usual one, mm. */
  readonly most: number | null;
  /** The whole work lies on it, so that its pegs are clear of the floor. */
  readonly isFooting: boolean;
}


/** A block, mm: one on either side of work that stands is so high, one under work as high as that lies over the bench. */
const BLOCK = { along: 70, across: 60, high: 90 } as const;
/** What is no higher over the lowest place than this rests on a block, mm. */
const LOW = 30;
/** What moves passes a block with so much room, mm. */
const CLEAR = 5;
/** More of a bar than the first joint takes is free before its outer block: room for a hand, and a round figure, mm. */
const BESIDE_JOINT = 60;
const ROUND = 10;
/** How thick a block beside work is: as usual, or as the room is, mm. */
const THIN: readonly number[] = [BLOCK.across, 40, 25];
/** What is no longer than so many blocks stands on one alone. */
const SHORT = 4;

/** The blocks that a step's work lies on, and those that hold what it has propped: under each end of what hangs over the bench, on both sides of what stands on edge, and clear of the ways of all that moves. */
export function blocksOf(hand: StageHand, step: Step): readonly Block[] {
  const footing = footingBlocks(step.footing.before, step.standing.pose);
  if (step.props.length === 0) return footing;
  const slides = step.motions.filter((motion): motion is Slide => motion.kind === 'slide');
  const there = [...new Set([...step.present, ...slides.flatMap(({ parts }) => parts), ...step.props.flat()])].filter((id) => !FASTENERS.has(hand.part(id).kind)).map((id) => hand.body(id, 'present'));
  const bench = footing[0]?.at[2] ?? boxRound(there).min[2];
  const middle = middleOf(boxRound(there.filter(({ id }) => step.props.flat().includes(id))));
  const props = shared(step.props.flatMap((holds): readonly Block[] => {
    const others = [...there.filter(({ id }) => !holds.includes(id)).map((body) => boxRound([body])), ...footing.map(boxOfBlock)];
    // What is set on blocks slides over them.
    const ways = slides.filter(({ parts }) => !parts.some((id) => holds.includes(id))).flatMap((slide) => waysOf(hand, step, slide));
    const isFree = (box: Box): boolean => !ways.some((way) => overlap(box, way, CLEAR)) && !others.some((other) => overlap(box, other, 0));
    const work: Work = { bodies: there.filter(({ id }) => holds.includes(id)), bench, holds, isFree };
    const over = slides.filter((slide) => sleevesOver(slide, holds).length > 0);
    if (boxRound(work.bodies).min[2] - bench <= STANDS) return beside(work);
    return over.length > 0 ? underBar(hand, step, { ...work, bench: clearOfPegs(hand, step, there, bench) }, over, middle) : under(work);
  }));
  return [...footing, ...props];
}

/** Blocks as the plan has them, with work lying as a pose has it; each comes from the outside across what lies on it. */
export function footingBlocks(footing: readonly Footing[], lying: Pose): readonly Block[] {
  const stand = footing.map((each) => {
    const own = chained(lying, each.pose);
    return { ...each, axis: axisOf(own), at: placed(own, [0, 0, 0]) };
  });
  const middle = stand.reduce<Vec3>((sum, { at }) => plus(sum, times(at, 1 / stand.length)), [0, 0, 0]);
  return stand.map(({ axis, at, long, wide, high, holds }): Block => ({
    ...blockAt(axis, long, high, at, wide), out: level(axis, 0, at[acrossTo(axis)] < middle[acrossTo(axis)] + SAME_LINE ? -1 : 1), comes: 'to-work', leavesEarly: false,
    seenAlong: stand[0]?.axis ?? axis, holds, most: long < BLOCK.across ? long : null, isFooting: true,
  }));
}

/** Blocks on one line all come from the front, mm. */
const SAME_LINE = 0.1;

/** The level axis that a pose's own x lies along. */
const axisOf = (pose: Pose): Level => (Math.abs(turnedBy(pose, [1, 0, 0])[0]) > 0.5 ? 0 : 1);

/** Bars over which work comes that would stand on its pegs lie higher over the floor than these reach under them. */
function clearOfPegs(hand: StageHand, step: Step, there: readonly SceneBody[], bench: number): number {
  const peg = lowestPeg(there.map(({ id }) => hand.part(id)), step.standing.pose);
  return peg < bench + AT_PEGS ? bench - PEGS_CLEAR : bench;
}

/** Pegs that are no higher over the lowest place than this are it, mm. */
const AT_PEGS = 0.1;

/** Where two pieces of work stand so close that there is no room for two blocks, one fills the room between and is lifted out; where two would stand in each other otherwise, one holds both. */
function shared(blocks: readonly Block[]): readonly Block[] {
  return blocks.reduce<readonly Block[]>((kept, block) => {
    const other = kept.find((each) => overlap(boxOfBlock(each), boxOfBlock(block), 0));
    if (other === undefined) return [...kept, block];
    return dot(other.out, block.out) > -FACING ? kept : kept.map((each) => (each === other ? between(other, block) : each));
  }, []);
}

/** Blocks face each other where the cosine between their ways out is less than minus this. */
const FACING = 0.99;

/** From the work's side of one block to that of the other. */
function between(one: Block, other: Block): Block {
  const [own, far] = [boxOfBlock(one), boxOfBlock(other)];
  const side = ({ out }: Block, { min, max }: Box, axis: Level): number => (out[axis] > 0 ? min : max)[axis];
  const span = (axis: Level): readonly [number, number] => (one.out[axis] === 0 ? [own.min[axis], own.max[axis]] : [side(one, own, axis), side(other, far, axis)]);
  const [x, y] = [span(0), span(1)];
  return {
    ...one, out: [0, 0, 1], holds: [...one.holds, ...other.holds], at: [(x[0] + x[1]) / 2, (y[0] + y[1]) / 2, one.at[2]],
    shape: { ...one.shape, width: Math.abs(x[1] - x[0]), height: Math.abs(y[1] - y[0]) },
    most: Math.floor(one.out[0] === 0 ? Math.abs(y[1] - y[0]) : Math.abs(x[1] - x[0])),
  };
}

/** What one set of blocks holds, over a bench at that height. */
interface Work {
  readonly bodies: readonly SceneBody[];
  readonly bench: number;
  readonly holds: readonly string[];
  /** Whether a block may stand there: in nothing, and clear of the ways of what moves. */
  readonly isFree: (box: Box) => boolean;
}

type Sleeve = Extract<Connection, { is: 'sleeve' }>;

/** Joints that a slide pushes over these bars. */
const sleevesOver = ({ closes, parts }: Slide, bars: readonly string[]): readonly Sleeve[] =>
  closes.filter((each): each is Sleeve => each.is === 'sleeve' && bars.includes(each.bar) && !parts.includes(each.bar));

/** The boxes that parts take on their way. */
function waysOf(hand: StageHand, step: Step, { parts, by }: Slide): readonly Box[] {
  const back = times(turnedBy(step.standing.pose, by), -1);
  return parts.filter((id) => !FASTENERS.has(hand.part(id).kind)).map((id) => reachingTo(boxRound([hand.body(id, 'present')]), back));
}

type Axis = 0 | 1 | 2;
const each = (value: (axis: Axis) => number): Vec3 => [value(0), value(1), value(2)];

/** Level ways, told along an axis and across it. */
export type Level = 0 | 1;
export const level = (axis: Level, along: number, across: number, high = 0): Vec3 => (axis === 0 ? [along, across, high] : [across, along, high]);
const acrossTo = (axis: Level): Level => (axis === 0 ? 1 : 0);

/** A block of that height, the length of it along an axis. */
function blockAt(axis: Level, long: number, high: number, at: Vec3, thin: number = BLOCK.across): Pick<Block, 'shape' | 'at'> {
  const [width, height] = level(axis, long, thin);
  return { shape: { form: 'plate', width, height, thickness: high, holes: [] }, at };
}

/**
 * Under a bar over which work is pushed: one block at the end that the first joint does not reach, and one in from the
 * other end by as much as that joint takes. The second is in the way of what comes, and leaves when the first joint is on.
 */
function underBar(hand: StageHand, step: Step, { bodies, bench, holds }: Work, over: readonly Slide[], middle: Vec3): readonly Block[] {
  const box = boxRound(bodies);
  const first = over.reduce((longest, slide) => (lengthOf(slide.by) > lengthOf(longest.by) ? slide : longest));
  const way = turnedBy(step.standing.pose, first.by);
  const axis: Level = Math.abs(way[0]) > Math.abs(way[1]) ? 0 : 1;
  const sign = Math.sign(way[axis]);
  const [far, near] = sign > 0 ? [box.max[axis], box.min[axis]] : [box.min[axis], box.max[axis]];
  const joints = sleevesOver(first, holds).map(({ joint }) => boxRound([hand.body(joint, 'present')]));
  const free = Math.min(...joints.map(({ min, max }) => Math.abs(far - (sign > 0 ? max : min)[axis])));
  const taken = Math.max(...joints.map(({ min, max }) => max[axis] - min[axis]));
  const long = Math.floor(Math.min(BLOCK.along, free - CLEAR) / ROUND) * ROUND;
  const inwards = Math.ceil((taken + BESIDE_JOINT) / ROUND) * ROUND;
  const across = middleOf(box)[acrossTo(axis)];
  const aside = across < middle[acrossTo(axis)] ? -1 : 1;
  const high = box.min[2] - bench;
  return [
    { ...blockAt(axis, long, high, level(axis, far - (sign * long) / 2, across, bench)), out: level(axis, sign, 0), comes: 'before', leavesEarly: false, seenAlong: acrossTo(axis), holds, most: null, isFooting: false },
    { ...blockAt(axis, BLOCK.along, high, level(axis, near + sign * (inwards + BLOCK.along / 2), across, bench)), out: level(axis, 0, aside), comes: 'before', leavesEarly: true, seenAlong: acrossTo(axis), holds, most: null, isFooting: false },
  ];
}

/**
 * Under what hangs over the bench: as near to both ends of what is lowest as it rests on them there, or to the middle of what is
 * short, and as near to the middle of its depth as there is room.
 */
function under({ bodies, bench, holds, isFree }: Work): readonly Block[] {
  const { min, max } = lowerEdge(bodies);
  const boxes = bodies.map((body) => boxRound([body]));
  const [isShort, middle] = [max[0] - min[0] <= SHORT * BLOCK.along, (min[0] + max[0]) / 2];
  const depth = Math.max(0, (max[1] - min[1] - BLOCK.across) / 2);
  const aside = [0, ...steps(depth).flatMap((off) => [off, -off])];
  const places = isShort ? [0] : [-1, 1];
  return places.flatMap((end): readonly Block[] => {
    const outermost = end === 0 ? middle : middle + end * ((max[0] - min[0] - BLOCK.along) / 2);
    const inwards = end === 0 ? [0] : [0, ...steps(Math.abs(outermost - middle))];
    const out: Vec3 = end === 0 ? [0, -1, 0] : [end, 0, 0];
    const tried = inwards.flatMap((inward) => aside.map((off): Block => ({
      ...blockAt(0, BLOCK.along, min[2] - bench, [outermost - end * inward, (min[1] + max[1]) / 2 + off, bench]), out, comes: 'to-work', leavesEarly: false, seenAlong: isShort ? 1 : 0, holds, most: null, isFooting: false,
    })));
    const free = tried.filter((block) => isFree(boxOfBlock(block)));
    const upToBars = (): Block | undefined => free.flatMap((block) => upToBar(boxes, block) ?? []).find((block) => isFree(boxOfBlock(block)));
    return [free.find((block) => restsOn(bodies, boxOfBlock(block))) ?? upToBars() ?? free[0] ?? tried[0] ?? []].flat();
  });
}

/** A bar is so much longer than it is wide and high. */
const SLENDER = 3;

/** A block moved to the middle of the lowest level bar over it and made as high as that; null where there is none, or something else is lower over it then. */
function upToBar(boxes: readonly Box[], block: Block): Block | null {
  const over = ({ min, max }: Box): readonly Box[] => boxes.filter((box) => ([0, 1] as const).every((axis) => box.min[axis] < max[axis] && box.max[axis] > min[axis]));
  const bars = over(boxOfBlock(block)).flatMap((box) => {
    const [x, y, z] = each((axis) => box.max[axis] - box.min[axis]);
    return x > SLENDER * Math.max(y, z) ? [{ box, along: 0 as Level }] : y > SLENDER * Math.max(x, z) ? [{ box, along: 1 as Level }] : [];
  });
  const bar = bars.toSorted((one, other) => one.box.min[2] - other.box.min[2])[0];
  if (bar === undefined) return null;
  const across = acrossTo(bar.along);
  const at = each((axis) => (axis === across ? middleOf(bar.box)[axis] : block.at[axis]));
  const fitted: Block = { ...block, at, shape: { ...block.shape, thickness: bar.box.min[2] - block.at[2] } };
  return over(boxOfBlock(fitted)).every(({ min }) => min[2] >= bar.box.min[2]) ? fitted : null;
}

/** Round distances up to one, mm. */
const steps = (upTo: number): readonly number[] => Array.from({ length: Math.floor(upTo / ROUND) }, (_, index) => ROUND * (index + 1));

/** The box round what of some bodies is lowest. */
function lowerEdge(bodies: readonly SceneBody[]): Box {
  const low = boxRound(bodies).min[2] + LOW;
  return boxRound(bodies.filter((body) => boxRound([body]).min[2] < low));
}

/**
 * On both sides of what stands on edge, across its thinner way: as far towards both ends as there is room from the middle on.
 * A thinner block stands between work that stands close, and is lifted out.
 */
function beside({ bodies, bench, holds, isFree }: Work): readonly Block[] {
  const box = boxRound(bodies);
  const axis: Level = box.max[0] - box.min[0] < box.max[1] - box.min[1] ? 1 : 0;
  const [from, to] = [box.min[axis] + BLOCK.along / 2, box.max[axis] - BLOCK.along / 2];
  const middle = (from + to) / 2;
  const pairAt = (along: number): readonly (readonly Block[])[] => {
    const [low, high] = sidesAt(bodies, axis, along, bench) ?? [box.min[acrossTo(axis)], box.max[acrossTo(axis)]];
    return ([-1, 1] as const).map((side) => THIN.map((thin): Block => ({
      ...blockAt(axis, BLOCK.along, BLOCK.high, level(axis, along, (side < 0 ? low : high) + (side * thin) / 2, bench), thin),
      out: thin === BLOCK.across ? level(axis, 0, side) : [0, 0, 1], comes: 'to-work', leavesEarly: false, seenAlong: axis, holds,
      most: thin === BLOCK.across ? null : thin, isFooting: false,
    })));
  };
  const free = (along: number): readonly Block[] => pairAt(along).flatMap((blocks) => blocks.find((block) => isFree(boxOfBlock(block))) ?? []);
  const towards = (end: number): readonly Block[] => {
    const places = Array.from({ length: Math.floor(Math.abs(end - middle) / ROUND) + 1 }, (_, index) => end - Math.sign(end - middle) * ROUND * index).toReversed();
    const pairs = places.map(free);
    const first = pairs.findIndex(({ length }) => length === 2);
    const next = pairs.findIndex(({ length }, index) => index > first && length < 2);
    return pairs[first < 0 ? -1 : (next < 0 ? pairs.length : next) - 1] ?? pairAt(end).flatMap((blocks) => blocks.slice(0, 1));
  };
  return to - from <= (SHORT - 1) * BLOCK.along ? pairAt(middle).flatMap((blocks) => blocks.find((block) => isFree(boxOfBlock(block))) ?? blocks.slice(0, 1)) : [...towards(from), ...towards(to)];
}

/** How far what is as low as a block reaches to both sides where the block stands along it; null where nothing does. */
function sidesAt(bodies: readonly SceneBody[], axis: Level, along: number, bench: number): readonly [number, number] | null {
  const half = BLOCK.along / 2;
  const near = bodies.map((body) => boxRound([body])).filter(({ min, max }) => min[2] < bench + BLOCK.high && min[axis] < along + half && max[axis] > along - half);
  const across = acrossTo(axis);
  return near.length === 0 ? null : [Math.min(...near.map(({ min }) => min[across])), Math.max(...near.map(({ max }) => max[across]))];
}

export const boxOfBlock = ({ at, shape: { width, height, thickness } }: Pick<Block, 'at' | 'shape'>): Box =>
  ({ min: plus(at, [-width / 2, -height / 2, 0]), max: plus(at, [width / 2, height / 2, thickness]) });

/** Whether boxes come nearer to each other than `room`, mm. */
const overlap = (one: Box, other: Box, room: number): boolean => ([0, 1, 2] as const).every((axis) => one.min[axis] < other.max[axis] + room && one.max[axis] > other.min[axis] - room);
