import { chained, dot, lengthOf, minus, moved, placed, plus, times, turned, type PartKind, type Pose, type Shape, type Vec3 } from '../../model/index.ts';
import { isSetOnItsFeet, type Footing } from '../../plan/index.ts';
import { tell } from '../told.ts';
import type { Mark, Scene, SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import { boxRound, middleOf, type Box } from './extent.ts';
import { liftingHands, type Turning } from './lifting-hands.ts';
import { stageHand } from './stage.ts';
import { tapesOn } from './taped.ts';
import { ACROSS_PAPER, STANDARD_VIEW } from './views.ts';
import { sceneName, type StepGivens, type WorkScene } from './work-scene.ts';

const ARROW_STEPS = 28;

/** Work by which the whole is turned: pale as it lay before, full as it lies after, the arrow from one to the other, and how far. */
export const turnWork: WorkScene = {
  scene: (givens) => {
    const { before, turn } = turning(givens);
    const tapes = tapesOn(givens.model, stageHand(givens.model, givens.step, givens.solids), givens.step.present);
    const bodies = [...turnedBodies(before, turn, '#after'), ...tapedBodies(tapes, turn, '#after')];
    const { left, setDown } = turnedBlocks(givens, turn);
    const scene: Scene = { id: sceneName(givens.step), bodies: [...bodies, ...left, ...setDown], marks: [...turn.marks, ...(turn.axis === null ? [] : [turn.axis]), ...tapesCounted(tapes, turn)], view: STANDARD_VIEW };
    const { model, step, solids } = givens;
    const hands = liftingHands({ model, stage: stageHand(model, step, solids), step, present: step.present, scene }, turn);
    return { ...scene, marks: [...scene.marks, ...hands] };
  },
  series: inQuarters,
  moment: (givens, done) => {
    const { before, turn } = turning(givens);
    return { id: sceneName(givens.step), bodies: before.map((body) => ({ ...body, pose: chained(turn.pose(done), body.pose) })), marks: [], view: STANDARD_VIEW };
  },
};

/** The work as it lies before, and its way round. */
function turning({ model, step, solids }: StepGivens): { readonly before: readonly SceneBody[]; readonly axis: Vec3; readonly angle: number; readonly turn: Turn } {
  const motion = step.motions.find((candidate) => candidate.kind === 'turn');
  if (motion?.kind !== 'turn') throw new RangeError(`step ${step.number} (${step.key}) turns nothing`);
  const hand = stageHand(model, step, solids);
  const before = step.present.map((id) => hand.body(id, 'present'));
  const axis = axisSeen(turnedBy(step.standing.pose, motion.axis), motion.angle);
  return { before, axis, angle: motion.angle, turn: turnOf(axis, motion.angle, before) };
}

/** How two people roll work over: up onto its side; then they take hold of what is on top now, and let it down. None where it is only tipped. */
function inQuarters(givens: StepGivens): readonly Scene[] {
  const { model, step, solids } = givens;
  const { before, axis, angle } = turning(givens);
  if (angle <= ROLLS) return [];
  const up = turnOf(axis, angle / 2, before);
  const onSide = before.map((body): SceneBody => ({ ...body, pose: chained(up.pose(1), body.pose) }));
  const down: Turn = { ...turnOf(axis, angle / 2, onSide), leads: up.leads };
  const lies = chained(up.pose(1), step.standing.pose);
  const tapes = tapesOn(model, stageHand(model, step, solids), step.present);
  const onSideTaped = tapes.map((body): SceneBody => ({ ...body, pose: chained(up.pose(1), body.pose) }));
  return [{ bodies: before, tapes, turn: up, step }, { bodies: onSide, tapes: onSideTaped, turn: down, step: { ...step, standing: { ...step.standing, pose: lies } } }].map((quarter, index): Scene => {
    const stage = stageHand(model, quarter.step, solids);
    const scene: Scene = { id: `quarter-${index + 1}:${step.number}`, number: index + 1, bodies: [...turnedBodies(quarter.bodies, quarter.turn, '#after'), ...tapedBodies(quarter.tapes, quarter.turn, '#after')], marks: quarter.turn.marks, view: STANDARD_VIEW };
    return { ...scene, marks: [...scene.marks, ...liftingHands({ model, stage, step: quarter.step, present: step.present, scene }, quarter.turn)] };
  });
}

/** The blocks that the work lay on, pale, and those that it is set down on; as it lies before, they are where the plan has them. */
function turnedBlocks({ model, step, solids }: StepGivens, turn: Turn): { readonly left: readonly SceneBody[]; readonly setDown: readonly SceneBody[] } {
  const hand = stageHand(model, step, solids);
  const lying = step.standing.pose;
  const block = ({ long, wide, high }: Footing): Shape => ({ form: 'plate', width: long, height: wide, thickness: high, holes: [] });
  const { before, after } = step.footing;
  return {
    // Nothing is tipped up over blocks: they are away before it is set on its feet.
    left: isSetOnItsFeet(step) ? [] : before.map((each, index) => hand.prop({ tool: `block-${index + 1}` }, block(each), chained(lying, each.pose), 'pale')),
    setDown: after.map((each, index) => hand.prop({ tool: `block-${index + 1}#after` }, block(each), chained(turn.pose(1), lying, each.pose), 'present')),
  };
}

export interface Turn extends Turning {
  /** The pose after a share 0…1 of the turn. */
  readonly pose: (share: number) => Pose;
  /** The arrow along it, and how far it goes. */
  readonly marks: readonly Mark[];
  /** The line that work is rolled over about, seen past both sides of it; null where it is tipped or turned on the spot. */
  readonly axis: Mark | null;
  /** The bars that lead: tinted before and after, they show where each side goes. */
  readonly leads: ReadonlySet<string>;
}

/** The work before and after a turn; `after` makes the name of a body that lies after it. */
export const turnedBodies = (before: readonly SceneBody[], { pose, leads }: Turn, after: string): readonly SceneBody[] => [
  ...before.map((body): SceneBody => ({ ...body, look: leads.has(body.id) ? 'new' : 'pale' })),
  ...before.map((body): SceneBody => ({ ...body, id: `${body.id}${after}`, look: leads.has(body.id) ? 'new' : 'present', pose: chained(pose(1), body.pose) })),
];

/** The tape that is round the work before and after a turn; `after` as with the work. */
export const tapedBodies = (tapes: readonly SceneBody[], { pose }: Turn, after: string): readonly SceneBody[] =>
  [...tapes, ...tapes.map((body): SceneBody => ({ ...body, id: `${body.id}${after}`, pose: chained(pose(1), body.pose) }))];

/** How many, told after the turn at the one farthest from where its arrow ends; one needs no figure. The one nearest to that is enlarged. */
export function tapesCounted(tapes: readonly SceneBody[], { pose, marks }: Turn): readonly Mark[] {
  const head = marks.flatMap((mark) => (mark.mark === 'arrow' ? mark.path.slice(-1) : []))[0] ?? [0, 0, 0];
  const places = tapes.map((body) => placed(chained(pose(1), body.pose), [0, 0, 0])).toSorted((a, b) => lengthOf(minus(b, head)) - lengthOf(minus(a, head)));
  return [
    ...(places.length < 2 ? [] : places.slice(0, 1).map((at): Mark => ({ mark: 'label', at, told: tell.times(places.length) }))),
    ...places.slice(-1).map((at): Mark => ({ mark: 'detail', at, radius: TAPE_ROUND })),
  ];
}

/** How much round a tape is enlarged, mm. */
const TAPE_ROUND = 90;

const BARS: ReadonlySet<SceneBody['kind']> = new Set<PartKind>(['long-tube', 'short-tube', 'post', 'bar']);
/** Bars that reach this near to the outermost lead with it, mm. */
const LEADS = 3;

/** The middle of a bar is so deep in a panel that is wrapped round it at least, mm. */
const WRAPPED = 3;

/** Whether a panel is wrapped round a bar, so that its tint would not be seen. */
function isWrapped(bar: SceneBody, panels: readonly Box[]): boolean {
  const middle = middleOf(boxRound([bar]));
  return panels.some(({ min, max }) => ([0, 1, 2] as const).every((axis) => middle[axis] > min[axis] + WRAPPED && middle[axis] < max[axis] - WRAPPED));
}

/** The longest bars of one side, the upper or the front one, of those that no panel is wrapped round where there are any; where all bars are on it, as with a single one, what is at its right end. */
function leading(before: readonly SceneBody[], [x, y, z]: Vec3): ReadonlySet<string> {
  const panels = before.filter(({ kind }) => kind === 'panel').map((body) => boxRound([body]));
  const all = before.filter(({ kind }) => BARS.has(kind));
  const bare = all.filter((body) => !isWrapped(body, panels));
  const bars = (bare.length > 0 ? bare : all).map((body) => {
    const { min, max } = boxRound([body]);
    return { id: body.id, long: lengthOf(minus(max, min)), out: [x, y, z].reduce((sum, share, axis) => sum + Math.max(share * (min[axis] ?? 0), share * (max[axis] ?? 0)), 0) };
  });
  const farthest = Math.max(...bars.map(({ out }) => out));
  const outermost = bars.filter(({ out }) => farthest - out < LEADS);
  const longest = Math.max(...outermost.map(({ long }) => long));
  return outermost.length === all.length ? rightEnd(before) : new Set(outermost.filter(({ long }) => longest - long < LEADS).map(({ id }) => id));
}

/** The joint farthest to the right, of several there: it is the same one before and after. */
function rightEnd(before: readonly SceneBody[]): ReadonlySet<string> {
  const ends = before.filter(({ kind }) => kind === 'joint').map((body) => ({ id: body.id, at: dot(middleOf(boxRound([body])), ACROSS_PAPER) })).sort((a, b) => b.at - a.at);
  return new Set(ends.length < 2 ? [] : ends.slice(0, 1).map(({ id }) => id));
}

const turnMarks = (path: readonly Vec3[], angle: number): readonly Mark[] => [
  { mark: 'arrow', path },
  { mark: 'label', at: path[Math.floor(path.length / 2)] ?? [0, 0, 0], told: tell.angle(angle) },
];

/** Bodies turned by hand as they lie: their way round, and an arrow along it. About a level axis they are rolled or tipped over, about the upright they are turned on the spot, and set down aside. */
export const turnOf = (axis: Vec3, angle: number, before: readonly SceneBody[]): Turn =>
  (Math.abs(axis[2]) > 0.5 ? aboutUpright(axis, angle, before) : aboutLevel(axis, angle, before));

/** Work that is turned further than this, rad, rolls over onto its other face; else it is tipped onto an edge. */
const ROLLS = 2.4;

/** The plan tells what comes up; seen from the bench the work goes the other way. Turned right over, it rolls towards the reader. */
function axisSeen([x, y]: Vec3, angle: number): Vec3 {
  const axis: Vec3 = [whole(-x), whole(-y), 0];
  const isAway = axis[0] < -1e-6 || (Math.abs(axis[0]) < 1e-6 && axis[1] > 0);
  return angle > ROLLS && isAway ? times(axis, -1) : axis;
}

const whole = (value: number): number => (Math.abs(value - Math.round(value)) < 1e-9 ? Math.round(value) + 0 : value);

/** Share of the work's depth that is left between before and after; of a thin bar's length where it is tipped up. */
const GAP = 0.28;
const GAP_ALONG = 0.22;

function aboutLevel(axis: Vec3, angle: number, before: readonly SceneBody[]): Turn {
  const box = boxRound(before);
  const middle = middleOf(box);
  // The way its top goes.
  const way: Vec3 = [axis[1], -axis[0], 0];
  const rolls = angle > ROLLS;
  const gap = GAP * 2 * halfAlong(box, rolls ? way : axis);
  const edge = plus(middle, times(way, halfAlong(box, way) + (rolls ? gap : 0)));
  const pivot: Vec3 = [edge[0], edge[1], rolls ? middle[2] : box.min[2]];
  const aside = times(way, rolls ? 0 : Math.max(gap, GAP_ALONG * 2 * halfAlong(box, way)));
  const pose = (share: number): Pose => chained(moved(plus(pivot, times(aside, share))), turned(axis, angle * share), moved(times(pivot, -1)));
  const start = plus([middle[0], middle[1], box.max[2]], times(way, rolls ? 0 : -halfAlong(box, way)));
  const path = Array.from({ length: ARROW_STEPS + 1 }, (_, index) => placed(pose(0.08 + (0.84 * index) / ARROW_STEPS), start));
  return { pose, marks: turnMarks(path, angle), about: axis, rises: rolls ? null : times(way, -1), axis: rolls ? axisLine(pivot, axis, halfAlong(box, axis)) : null, leads: leading(before, [0, 0, 1]) };
}

/** So much longer than the work the line is on either side, as a share of half of that, and mm at least. */
const PAST = { share: 0.3, least: 80 } as const;

function axisLine(through: Vec3, axis: Vec3, half: number): Mark {
  const long = half + Math.max(PAST.least, PAST.share * half);
  return { mark: 'axis', from: plus(through, times(axis, -long)), to: plus(through, times(axis, long)) };
}

/** Turned on the spot, and drawn beside where it lay before, on the side to which its front goes; so the arrow round its front leads from before to after. */
function aboutUpright(axis: Vec3, angle: number, before: readonly SceneBody[]): Turn {
  const box = boxRound(before);
  const middle = middleOf(box);
  const halves = [halfAlong(box, [1, 0, 0]), halfAlong(box, [0, 1, 0])] as const;
  const after = [0, 1].map((way) => Math.abs(Math.cos(angle)) * (halves[way] ?? 0) + Math.abs(Math.sin(angle)) * (halves[1 - way] ?? 0));
  // As far as both reach across the paper, with white between them.
  const reach = seenAcross(halves) + seenAcross(after);
  const side = Math.sign(axis[2] * angle);
  const aside: Vec3 = [(side * reach * (1 + GAP / 2)) / ACROSS[0], 0, 0];
  const pose = (share: number): Pose => chained(moved(plus(middle, times(aside, share))), turned(axis, angle * share), moved(times(middle, -1)));
  const centre: Vec3 = [middle[0] + aside[0] / 2, middle[1], box.max[2]];
  const first = -Math.PI / 2 - (axis[2] * angle) / 2;
  const path = Array.from({ length: ARROW_STEPS + 1 }, (_, index): Vec3 => {
    const at = first + (axis[2] * angle * index) / ARROW_STEPS;
    return plus(centre, [ROUND * reach * Math.cos(at), ROUND * reach * Math.sin(at), 0]);
  });
  return { pose, marks: turnMarks(path, angle), about: halves[0] > halves[1] ? [1, 0, 0] : [0, 1, 0], rises: null, axis: null, leads: leading(before, [0, -1, 0]) };
}

/** How far off the middle the arrow goes round, as a share of the work's reach. */
const ROUND = 0.6;
/** Shares of the level ways that run across the paper, as all pictures are seen. */
const ACROSS: readonly [number, number] = [0.86, 0.5];
const seenAcross = ([x = 0, y = 0]: readonly number[]): number => ACROSS[0] * x + ACROSS[1] * y;

/** Half of how far a box reaches along a level direction, mm. */
const halfAlong = ({ min, max }: Box, [x, y]: Vec3): number => (Math.abs(x) * (max[0] - min[0]) + Math.abs(y) * (max[1] - min[1])) / 2;
