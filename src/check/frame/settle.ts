import type { Assembly, Spring } from './assembly.ts';
import { FrameError, MechanismError } from './errors.ts';
import { shiftsOf, type Answer } from './shifts.ts';

/** The frame at rest: every taut cable is stretched, every slack one is not. */
export interface Settled {
  readonly shifts: Float64Array;
  /** Pull in each cable, N. */
  readonly pulls: readonly number[];
}

/** What a slack cable keeps of its stiffness on the way, so that a frame that hangs loose for a moment can be solved. */
const SLACK_SHARE = 1e-4;
/** Slack cables may carry so much of the load on the way; more, and the frame does not stand without them. */
const IDLE_SHARE = 1e-3;
const ROUNDS = 100;

/**
 * Takes slack cables out and solves again until nothing changes. The strain energy of a frame with cables that
 * only pull is convex, so Newton steps that never raise it end at the one answer whichever cables start taut.
 * Where the slack cables are wanted only against a play that no load works on, they are left in at a ten-thousandth.
 * Errors: MechanismError; FrameError where the cables do not settle.
 */
export function settle(assembly: Assembly): Settled {
  let shifts = shiftsWith(assembly, assembly.springs.map(() => true));
  for (let round = 0; round < ROUNDS; round += 1) {
    const taut = tautAt(assembly, shifts);
    const next = shiftsWith(assembly, taut);
    if (isSame(taut, tautAt(assembly, next))) return withoutSlack(assembly, taut, next);
    shifts = downhill(assembly, shifts, next);
  }
  throw new FrameError(`after ${ROUNDS} rounds the cables still change between taut and slack`);
}

/** Solves once more with the slack cables gone. */
function withoutSlack(assembly: Assembly, taut: readonly boolean[], softened: Float64Array): Settled {
  if (taut.every(Boolean)) return rest(assembly, taut, softened);
  const bare = shiftsOf(assembly, taut.map((is) => (is ? 1 : 0)));
  if (bare.stands && isSame(taut, tautAt(assembly, bare.shifts))) return rest(assembly, taut, bare.shifts);
  if (!bare.stands && carriedBySlack(assembly, taut, softened) > IDLE_SHARE * loadOf(assembly)) {
    throw new MechanismError(bare.loose);
  }
  return rest(assembly, taut, softened);
}

function rest({ springs }: Assembly, taut: readonly boolean[], shifts: Float64Array): Settled {
  return { shifts, pulls: springs.map((spring, index) => (taut[index] ? Math.max(0, pullIn(spring, shifts)) : 0)) };
}

function shiftsWith(assembly: Assembly, taut: readonly boolean[]): Float64Array {
  const answer: Answer = shiftsOf(assembly, taut.map((is) => (is ? 1 : SLACK_SHARE)));
  if (!answer.stands) throw new MechanismError(answer.loose);
  return answer.shifts;
}

const stretchOf = ({ along, places }: Spring, shifts: Float64Array): number =>
  places.reduce((sum, place, i) => sum + (along[i] ?? 0) * (shifts[place] ?? 0), 0);

const pullIn = (spring: Spring, shifts: Float64Array): number => spring.stiffness * stretchOf(spring, shifts);

/** A cable neither stretched nor slack within rounding counts as taut. */
function tautAt(assembly: Assembly, shifts: Float64Array): readonly boolean[] {
  const rounding = 1e-9 * loadOf(assembly);
  return assembly.springs.map((spring) => pullIn(spring, shifts) >= -rounding);
}

/** The greatest load, N; moments over the frame's extent. */
const loadOf = ({ loads, extent }: Assembly): number =>
  loads.reduce((most, load, index) => Math.max(most, Math.abs(load) / (index % 6 < 3 ? 1 : extent)), 0);

const carriedBySlack = ({ springs }: Assembly, taut: readonly boolean[], shifts: Float64Array): number =>
  springs.reduce((sum, spring, index) => (taut[index] ? sum : sum + SLACK_SHARE * Math.abs(pullIn(spring, shifts))), 0);

const isSame = (a: readonly boolean[], b: readonly boolean[]): boolean => a.every((value, index) => value === b[index]);

/** As far along the step as the energy falls. */
function downhill(assembly: Assembly, start: Float64Array, end: Float64Array): Float64Array {
  const before = energyAt(assembly, start);
  for (let share = 1; share > 1e-6; share /= 2) {
    const point = start.map((value, index) => value + share * ((end[index] ?? 0) - value));
    if (energyAt(assembly, point) < before) return point;
  }
  return end;
}

/** ½ uᵀ K u + ½ Σ k e² − fᵀ u, N·mm. */
function energyAt({ size, stiffness, springs, loads }: Assembly, shifts: Float64Array): number {
  let energy = 0;
  shifts.forEach((shift, row) => {
    if (shift === 0) return;
    const force = shifts.reduce((sum, other, column) => sum + (stiffness[row * size + column] ?? 0) * other, 0);
    energy += shift * (force / 2 - (loads[row] ?? 0));
  });
  return springs.reduce((sum, spring) => {
    const stretch = stretchOf(spring, shifts);
    return sum + (spring.stiffness * stretch ** 2 * (stretch > 0 ? 1 : SLACK_SHARE)) / 2;
  }, energy);
}
