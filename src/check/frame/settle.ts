import type { Assembly, Spring } from './assembly.ts';
import { FrameError, MechanismError } from './errors.ts';
import { greatestLoad, shiftsOf, type Answer } from './shifts.ts';

/** The frame at rest: every taut cable is stretched, every slack one is not. */
export interface Settled {
  readonly shifts: Float64Array;
  /** Pull in each cable, N. */
  readonly pulls: readonly number[];
}

/** What a slack cable keeps of its stiffness on the way, so that a frame that hangs loose for a moment can be solved. */
const SLACK_SHARE = 1e-4;
const ROUNDS = 100;

/**
 * Takes slack cables out and solves again until nothing changes: first with a ten-thousandth of their stiffness left,
 * then with none. Where the frame then has a play that no load drives (crossed cables both slack on a face that is not
 * pushed), the first answer stands. Errors: MechanismError; FrameError where the cables do not settle.
 */
export function settle(assembly: Assembly): Settled {
  const every = assembly.springs.map(() => true);
  const shiftsWith = solver(assembly);
  const start = shiftsWith(every, SLACK_SHARE);
  if (!start.stands) throw new MechanismError(start.loose);
  const softened = rounds(assembly, shiftsWith, SLACK_SHARE, start.shifts);
  if (!softened.stands) throw new MechanismError(softened.loose);
  const bare = shiftsWith(tautAt(assembly, softened.shifts), 0);
  if (!bare.stands && bare.worked) throw new MechanismError(bare.loose);
  const last = bare.stands ? rounds(assembly, shiftsWith, 0, softened.shifts) : softened;
  return pulled(assembly, last.stands ? last.shifts : softened.shifts);
}

const pulled = ({ springs }: Assembly, shifts: Float64Array): Settled =>
  ({ shifts, pulls: springs.map((spring) => Math.max(0, pullIn(spring, shifts))) });

/**
 * The strain energy of a frame with cables that only pull is convex, so Newton steps that always lower it end
 * at the one answer, whichever cables are taut at the start.
 */
function rounds(assembly: Assembly, shiftsWith: Solver, slackShare: number, start: Float64Array): Answer {
  let shifts = start;
  for (let round = 0; round < ROUNDS; round += 1) {
    const taut = tautAt(assembly, shifts);
    const next = shiftsWith(taut, slackShare);
    if (!next.stands || isSame(taut, tautAt(assembly, next.shifts))) return next;
    const lower = downhill(assembly, slackShare, shifts, next.shifts);
    // Nothing lower within rounding: cables that carry nothing flicker between taut and slack.
    if (!lower) return next;
    shifts = lower;
  }
  throw new FrameError(`after ${ROUNDS} rounds the cables still change between taut and slack`);
}

/** The frame's shifts with the cables that are taut, and the share of its stiffness that each other keeps. */
type Solver = (taut: readonly boolean[], slackShare: number) => Answer;

/** Where no cable is slack, or there is none, the same is asked again and again: it is solved once. */
function solver(assembly: Assembly): Solver {
  const known = new Map<string, Answer>();
  return (taut, slackShare) => {
    const shares = taut.map((is) => (is ? 1 : slackShare));
    const key = shares.join(' ');
    const answer = known.get(key) ?? shiftsOf(assembly, shares);
    known.set(key, answer);
    return answer;
  };
}

const stretchOf = ({ along, places }: Spring, shifts: Float64Array): number =>
  places.reduce((sum, place, i) => sum + (along[i] ?? 0) * (shifts[place] ?? 0), 0);

const pullIn = (spring: Spring, shifts: Float64Array): number => spring.stiffness * stretchOf(spring, shifts);

/** A cable neither stretched nor slack within rounding counts as taut. */
function tautAt(assembly: Assembly, shifts: Float64Array): readonly boolean[] {
  const rounding = 1e-9 * greatestLoad(assembly);
  return assembly.springs.map((spring) => pullIn(spring, shifts) >= -rounding);
}

const isSame = (a: readonly boolean[], b: readonly boolean[]): boolean => a.every((value, index) => value === b[index]);

/** As far along the step as the energy falls, or null where it does not. */
function downhill(assembly: Assembly, slackShare: number, start: Float64Array, end: Float64Array): Float64Array | null {
  const before = energyAt(assembly, slackShare, start);
  for (let share = 1; share > 1e-6; share /= 2) {
    const point = start.map((value, index) => value + share * ((end[index] ?? 0) - value));
    if (energyAt(assembly, slackShare, point) < before - 1e-12 * Math.abs(before)) return point;
  }
  return null;
}

/** ½ uᵀ K u + ½ Σ k e² − fᵀ u, N·mm. */
function energyAt({ size, stiffness, springs, loads }: Assembly, slackShare: number, shifts: Float64Array): number {
  let energy = 0;
  shifts.forEach((shift, row) => {
    if (shift === 0) return;
    const force = shifts.reduce((sum, other, column) => sum + (stiffness[row * size + column] ?? 0) * other, 0);
    energy += shift * (force / 2 - (loads[row] ?? 0));
  });
  return springs.reduce((sum, spring) => {
    const stretch = stretchOf(spring, shifts);
    return sum + (spring.stiffness * stretch ** 2 * (stretch > 0 ? 1 : slackShare)) / 2;
  }, energy);
}
