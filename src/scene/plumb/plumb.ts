import { chained, dot, placed, undone, type Model, type Part, type Pose, type Solids, type Vec3 } from '../../model/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import { SCENES } from '../../work/scenes.ts';
import { turnedBy } from '../kit/directions.ts';
import { stageHand } from '../kit/stage.ts';
import { STANDARD_VIEW } from '../kit/views.ts';
import { cordStepsAfter } from '../cord-steps.ts';
import type { SceneBody, View } from '../types.ts';
import { stoodBy, type Stood } from './stood.ts';
import { boxed, facesBeside, highestBeside, reachBeside, type Boxed, type Faces, type Reach } from './beside-leg.ts';

/** The string hangs so far from a leg at least, and at most, mm; so much of the leg's height may be left out for each mm that it hangs nearer. */
const OFF = { least: 30, most: 120, worth: 1 / 150 } as const;
/** White between the string and all that stands out from the leg: more than a weight is thick, mm. Common practice, no source. */
const CLEAR = 12;
/** Distances of the string are whole steps of this, mm. */
const STEP = 10;
/** The string is measured so far under the straightedge and over the weight's point at least, mm, and as shares of the leg's height: there a hand and a rule have room. Common practice, no source. */
const ROOM = { under: { least: 30, share: 0.08 }, over: { least: 80, share: 0.15 } } as const;
/** The string swings so far to both sides; a rule is held to the leg in a strip so far to both sides, mm. */
const SWING = 12;
const RULE = 2;
/** Legs may be out of plumb by so much of the height between the two places where it is measured, and are not looked at closer than to so many mm: common practice, no source. */
export const OUT = { share: 1 / 200, least: 2 } as const;
/** A leg is measured at its face or at that of a joint on it, as long as it is straight over so much, mm: so far from the end of that, and both times at the same distance from its axis. */
const STRAIGHT = { least: 12, in: 20, same: 0.6, out: 10 } as const;
/** The straightedge lies over a leg from so far behind its axis to so far before it, and so wide; what it lies on is no more than so far over the leg's end, mm. */
const EDGE = { from: -40, to: 40, half: 8, over: 60 } as const;
/** Tops of legs that are less apart are equally high, and strings that are together less farther off equally far, mm. */
const LEVEL = 3;
const ALIKE = 40;

/** How a leg is looked at from one side: the string beside it. Lengths in mm. */
export interface PlumbSide {
  /** From the leg to the string. */
  readonly out: Vec3;
  /** Level, square to that, from where the leg is the nearest. */
  readonly view: View;
  /** How far out from the leg's axis it is measured from: the leg's face, or that of the joints on it. */
  readonly face: number;
  /** From there to the string where it is measured first, above. */
  readonly off: number;
  /** How far it may be from there, below. */
  readonly range: readonly [number, number];
  /** Heights of the two places where it is measured. */
  readonly upper: number;
  readonly lower: number;
  /** Down to where the weight hangs. */
  readonly low: number;
}

/** Work that stands, looked at with a plumb line beside one leg: from two sides, or from the one on which cords can hold it. Lengths in mm. */
export interface Plumb {
  /** For the first time, or again when all cords are tied. */
  readonly is: 'first' | 'again';
  readonly bodies: readonly SceneBody[];
  /** A place on the leg's axis, and its radius. */
  readonly leg: { readonly id: string; readonly at: Vec3; readonly radius: number };
  /** What the straightedge lies on, and the floor. */
  readonly top: number;
  readonly floor: number;
  readonly sides: readonly [PlumbSide, ...PlumbSide[]];
  /** The cords that hold it upright when it has been pushed so. */
  readonly held: HeldBy;
  /** The step that looks for the first time. */
  readonly step: number;
}

/** Cords, each from loop to loop, and the steps that tie them. */
export interface HeldBy {
  readonly cords: readonly (readonly [Vec3, Vec3])[];
  readonly steps: readonly number[];
}

/** How far the string may be from a leg below, where it is so far off above, so far over that, mm. */
export function plumbRange(off: number, between: number): readonly [number, number] {
  const out = Math.max(OUT.least, Math.round(between * OUT.share));
  return [off - out, off + out];
}

/** How a step's work is looked at with a plumb line; null where it is not: where no cords could hold it plumb, the step does not stand it up or tie the last cord, or no leg is upright. */
export function plumbOf(model: Model, plan: Plan, step: Step, solids: Solids): Plumb | null {
  const first = plan.steps.find(({ action }) => SCENES[action]?.standsUp === true);
  if (first === undefined) return null;
  const cordSteps = cordStepsAfter(plan, first);
  if (cordSteps.length === 0 || (step !== first && step !== cordSteps.at(-1))) return null;
  const found = looks.get(plan) ?? firstLook(model, first, cordSteps.map(({ number }) => number), solids);
  looks.set(plan, found);
  return found === null || step === first ? found?.told ?? null : again(model, step, solids, found.told, undone(found.pose));
}

/** The first look at work, with how it is turned and moved from the finished item then. */
interface FirstLook {
  readonly told: Plumb;
  readonly pose: Pose;
}

/** The first look of each plan, null where nothing can be looked at: it takes a second of a large item, and is asked for by two steps on every paper. */
const looks = new WeakMap<Plan, FirstLook | null>();

function firstLook(model: Model, step: Step, cordSteps: readonly number[], solids: Solids): FirstLook | null {
  const stood = stoodBy(model, step, solids);
  const leg = stood === null ? undefined : legOf(stood);
  if (stood === null || leg === undefined) return null;
  const held: HeldBy = { cords: cordsOf(model, stood.pose), steps: cordSteps };
  return { told: { is: 'first', bodies: tinted(stood.bodies, leg.leg.id), ...leg, sides: thoseHeld(leg.sides, held), held, step: step.number }, pose: stood.pose };
}

/** Of a leg's sides those on which something can be done where it leans: in whose plane there are cords, or all. */
function thoseHeld(sides: Plumb['sides'], held: HeldBy): Plumb['sides'] {
  const [first, ...others] = sides.filter(({ out }) => held.cords.some(([from, to]) => {
    const level = [to[0] - from[0], to[1] - from[1], 0] as const;
    return Math.abs(dot(level, out)) > ALONG * Math.hypot(...level);
  }));
  return first === undefined ? sides : [first, ...others];
}

/** The cosine from which a cord goes along a side. */
const ALONG = 0.9;

const tinted = (bodies: readonly SceneBody[], leg: string): readonly SceneBody[] => bodies.map((body) => ({ ...body, look: body.partId === leg ? 'new' : 'present' }));

type Looked = Pick<Plumb, 'leg' | 'top' | 'floor' | 'sides'>;

/** The leg at a corner that is looked at: the highest that a straightedge can lie on, of these one with little beside it, of these the nearest to the eye. */
function legOf({ bodies, pose, legs }: Stood): Looked | undefined {
  const places = legs.map((part) => ({ part, at: placed(pose, placed(part.pose, [0, 0, 0])) }));
  const [xs, ys] = [places.map(({ at }) => at[0]), places.map(({ at }) => at[1])];
  const corner = (values: readonly number[], value: number, towardsEye: number): number => {
    const [least, most] = [Math.min(...values), Math.max(...values)];
    if (most - least < 1) return Math.sign(towardsEye);
    return value - least < 1 ? -1 : most - value < 1 ? 1 : 0;
  };
  const all = boxed(bodies);
  const [eyeX, eyeY] = STANDARD_VIEW.towardsEye;
  const looked = places.flatMap(({ part, at }) => {
    const ways = [corner(xs, at[0], eyeX), corner(ys, at[1], eyeY)] as const;
    const found = ways.includes(0) ? null : lookedAt(all, part, at, [[ways[0], 0, 0], [0, ways[1], 0]]);
    return found === null ? [] : [{ ...found, near: at[0] * eyeX + at[1] * eyeY }];
  });
  const highest = Math.max(...looked.map(({ top }) => top));
  const high = looked.filter(({ top }) => highest - top < LEVEL);
  const least = Math.min(...high.map(offsOf));
  const best = high.filter((each) => offsOf(each) - least <= ALIKE).toSorted((a, b) => b.near - a.near)[0];
  if (best === undefined) return undefined;
  const { leg, top, floor, sides } = best;
  return { leg, top, floor, sides };
}

const offsOf = ({ sides }: Looked): number => sides.reduce((sum, { off }) => sum + off, 0);

/** A leg with the string out on two sides; null where a straightedge cannot lie on it, or it is nowhere straight enough to measure. */
function lookedAt(bodies: Boxed, part: Part, at: Vec3, ways: readonly [Vec3, Vec3]): Looked | null {
  if (part.shape.form !== 'tube') return null;
  const radius = part.shape.outside / 2;
  const floor = Math.min(...bodies.map(({ box }) => box.min[2]));
  const besideLeg = (out: Vec3): BesideLeg => ({ out, faces: facesBeside(bodies, { at, out }, SWING, EDGE.from) });
  const [one, other] = [besideLeg(ways[0]), besideLeg(ways[1])];
  const top = Math.max(...[one, other].map(({ faces }) => highestBeside(faces, EDGE.half, [EDGE.from, EDGE.to])));
  if (top - (at[2] + part.shape.length / 2) > EDGE.over) return null;
  const sides = [sideOf(one, other.out, radius, [floor, top]), sideOf(other, one.out, radius, [floor, top])] as const;
  return sides[0] === null || sides[1] === null ? null : { leg: { id: part.id, at, radius }, top, floor, sides: [sides[0], sides[1]] };
}

/** What is beside a leg one way out. */
interface BesideLeg {
  readonly out: Vec3;
  readonly faces: Faces;
}

/** The string beside a leg: as near as it can hang over most of the height. */
function sideOf({ out, faces: beside }: BesideLeg, towardsEye: Vec3, radius: number, [floor, top]: readonly [number, number]): PlumbSide | null {
  const faces = reachBeside(beside, RULE, [floor, top]);
  const wide = reachBeside(beside, SWING, [floor, top]);
  const offs = Array.from({ length: (OFF.most - OFF.least) / STEP + 1 }, (_, index) => OFF.least + STEP * index);
  const roomOf = ({ least, share }: typeof ROOM['under' | 'over']): number => Math.max(least, share * (top - floor));
  const runs = straightRuns(faces).filter(({ face }) => face >= radius - STRAIGHT.same && face < radius + STRAIGHT.out);
  const found = runs.flatMap(({ face }) => offs.flatMap((off) => {
    const low = lowestFree(wide, face + off - CLEAR);
    const [lowest, highest] = [low + roomOf(ROOM.over), top - roomOf(ROOM.under)];
    const own = runs.filter((run) => Math.abs(run.face - face) < STRAIGHT.same).map((run) => ({ ...run, from: Math.max(run.from, lowest), to: Math.min(run.to, highest) })).filter(({ from, to }) => to - from >= STRAIGHT.least);
    const [first, last] = [own[0], own.at(-1)];
    if (first === undefined || last === undefined) return [];
    const inside = ({ from, to }: Run): number => Math.min(STRAIGHT.in, (to - from) / 2);
    const [lower, upper] = [first.from + inside(first), last.to - inside(last)];
    return [{ face, off, low, lower, upper, worth: (upper - lower) / (top - floor) - (off - OFF.least) * OFF.worth }];
  }));
  const best = found.toSorted((a, b) => b.worth - a.worth || a.off - b.off || a.face - b.face)[0];
  if (best === undefined || best.upper - best.lower < STRAIGHT.in) return null;
  const { face, off, low, lower, upper } = best;
  return { out, view: { towardsEye, up: [0, 0, 1] }, face, off, range: plumbRange(off, upper - lower), upper, lower, low };
}

/** A stretch of a leg over which its face, or that of what is on it, is as far out, mm. */
interface Run {
  readonly face: number;
  readonly from: number;
  readonly to: number;
}

/** The straight stretches that are long enough, from below. */
function straightRuns({ from, pitch, outs }: Reach): readonly Run[] {
  const runs: Run[] = [];
  outs.forEach((face, place) => {
    const last = runs.at(-1);
    const begin = from + place * pitch;
    if (last !== undefined && Math.abs(last.face - face) < STRAIGHT.same) runs[runs.length - 1] = { ...last, to: begin + pitch };
    else runs.push({ face, from: begin, to: begin + pitch });
  });
  return runs.filter((run) => Number.isFinite(run.face) && run.to - run.from >= STRAIGHT.least);
}

/** Down to which height all is nearer to the leg's axis than so far out. */
function lowestFree({ from, pitch, outs }: Reach, out: number): number {
  const blocked = outs.findLastIndex((each) => each > out);
  return from + (blocked + 1) * pitch;
}

/** Each cord from loop to loop. */
const cordsOf = ({ parts }: Model, pose: Pose): readonly (readonly [Vec3, Vec3])[] => parts.flatMap((part) =>
  (part.shape.form === 'cable' ? [[placed(pose, placed(part.pose, [0, 0, 0])), placed(pose, placed(part.pose, [part.shape.length, 0, 0]))] as const] : []));

/** The same with all its cords, as it stands when they are tied. */
function again(model: Model, step: Step, solids: Solids, told: Plumb, before: Pose): Plumb {
  const hand = stageHand(model, step, solids);
  const cords = new Set(model.parts.filter(({ kind }) => kind === 'cable').map(({ id }) => id));
  const bodies = step.present.filter((id) => !cords.has(id)).map((id) => hand.body(id, 'present'));
  const moved = chained(step.standing.pose, before);
  const way = (direction: Vec3): Vec3 => turnedBy(moved, direction);
  const up = placed(moved, told.leg.at)[2] - told.leg.at[2];
  const side = ({ out, view, upper, lower, low, ...rest }: PlumbSide): PlumbSide =>
    ({ ...rest, out: way(out), view: { ...view, towardsEye: way(view.towardsEye) }, upper: upper + up, lower: lower + up, low: low + up });
  return {
    ...told, is: 'again', bodies: tinted(bodies, told.leg.id), leg: { ...told.leg, at: placed(moved, told.leg.at) }, top: told.top + up, floor: told.floor + up,
    sides: [side(told.sides[0]), ...told.sides.slice(1).map(side)],
    held: { ...told.held, cords: cordsOf(model, step.standing.pose) },
  };
}
